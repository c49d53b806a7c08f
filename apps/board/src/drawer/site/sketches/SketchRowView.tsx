import { LIMITS, type SketchId } from '@loopwright/model';
import { memo, useRef } from 'react';
import { Button, ToggleButton } from 'react-aria-components';
import type { DoEdit } from '../../../board/parts.ts';
import { saysTheSame } from '../../../reading/steady.ts';
import { TextLine } from '../../hole/TextLine.tsx';
import { useArrival } from '../../use-arrival.ts';
import type { SketchRow } from './sketches-view.ts';

interface SketchRowProps {
  readonly row: SketchRow;
  readonly chosen: boolean;
  readonly edit: DoEdit;
  readonly show: (id: SketchId) => void;
}

/** One sketch: what it is, what is read off it, whose it is; and whether it stays when others are wiped. */
export const SketchRowView = memo(function SketchRowView({ row, chosen, edit, show }: SketchRowProps) {
  const { id, title, value, by, colour, kept, note } = row;
  const item = useRef<HTMLLIElement>(null);
  useArrival(item, chosen);
  return (
    <li ref={item} tabIndex={-1} className={`sketch${chosen ? ' sketch--chosen' : ''}`}>
      <Button className="sketch__show" aria-label={`Show ${title}, ${value}, by ${by}`} onPress={() => show(id)}>
        <span className="sketch__title">{title}</span>
        <span className="sketch__value">{value}</span>
        <span className="sketch__by small soft">
          <span className="sketch__ink" style={{ background: colour }} aria-hidden="true" />
          {by}
          {note && !chosen && `: ${note}`}
        </span>
      </Button>
      <div className="sketch__does">
        <ToggleButton
          className="button button--small"
          isSelected={kept}
          onChange={(keeps) => edit({ edit: 'change sketch', sketch: id, to: { kept: keeps } })}
        >
          {kept ? 'Kept' : 'Keep'}
        </ToggleButton>
        <Button
          className="button button--small"
          aria-label={`Wipe ${title}, ${value}`}
          onPress={() => edit({ edit: 'wipe sketches', sketches: [id] })}
        >
          Wipe
        </Button>
      </div>
      {chosen && (
        <div className="sketch__note">
          <TextLine
            label="Note"
            text={note}
            most={LIMITS.note}
            lines="several"
            disabled={false}
            onText={(words) => edit({ edit: 'change sketch', sketch: id, to: { note: words.trim() || null } })}
          />
        </div>
      )}
    </li>
  );
}, saysTheSame);
