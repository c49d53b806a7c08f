import './day-start.css';
import { memo } from 'react';
import { ToggleButton } from 'react-aria-components';
import type { DayStartHold } from './use-day-start.ts';

type DayStartButtonProps = Pick<DayStartHold, 'since' | 'isShown' | 'toggle' | 'legend'>;

/** Lays the start of the day under the drawing, and says what is seen then. */
export const DayStartButton = memo(function DayStartButton({ since, isShown, toggle, legend }: DayStartButtonProps) {
  if (since === undefined) return null;
  return (
    <div className="day-start">
      <p className="day-start__legend" aria-live="polite">
        {legend}
      </p>
      <ToggleButton
        className="button button--small"
        isSelected={isShown}
        onChange={toggle}
        aria-label={`Start of the day, ${since} (key G)`}
      >
        Start of the day, {since}
      </ToggleButton>
    </div>
  );
});
