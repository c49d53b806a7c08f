import { ToggleButton, Tooltip, TooltipTrigger } from 'react-aria-components';
import type { Instrument } from '../instrument.ts';
import { INSTRUMENT_LETTERS } from '../letters.ts';
import { ICONS } from './icons.ts';

interface InstrumentButtonProps {
  readonly instrument: Pick<Instrument, 'name' | 'title' | 'does'>;
  readonly isHeld: boolean;
  /** Whether there is room for its name. */
  readonly words: boolean;
  readonly onTake: () => void;
}

/** One instrument: its sign, its name where there is room, its key and what it is for in a tip. */
export function InstrumentButton({ instrument, isHeld, words, onTake }: InstrumentButtonProps) {
  const { name, title, does } = instrument;
  const key = name === 'hand' ? 'Esc' : INSTRUMENT_LETTERS[name]?.toUpperCase();
  const icon = ICONS[name];
  return (
    <TooltipTrigger delay={600}>
      <ToggleButton className="instrument-tray__button" isSelected={isHeld} onChange={onTake} aria-label={title}>
        <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
          <path
            d={icon.line}
            fill="none"
            stroke="currentColor"
            strokeWidth="1.5"
            strokeLinejoin="round"
            strokeLinecap="round"
          />
          {icon.fill && <path d={icon.fill} fill="currentColor" />}
        </svg>
        {words && <span className="instrument-tray__word">{title}</span>}
      </ToggleButton>
      <Tooltip className="tip" placement="right" offset={8}>
        <strong>{title}</strong>
        {key && <kbd>{key}</kbd>}
        <span>{does}</span>
      </Tooltip>
    </TooltipTrigger>
  );
}
