import { memo } from 'react';
import { Button, DialogTrigger, Popover } from 'react-aria-components';
import { SeverityMark } from '../style/SeverityMark.tsx';
import { VERDICT_MARKS } from './verdict-marks.ts';

const VERDICTS = [
  ['keeper', 'a keeper'],
  ['sound', 'sound'],
  ['weak', 'weak'],
] as const;

const SEVERITIES = [
  ['stop', 'stop: a finding that should not stand'],
  ['look', 'look: somebody should look at it'],
  ['mention', 'mention: worth knowing'],
] as const;

/** What the marks on the beads mean, in words. */
export const Marks = memo(function Marks() {
  return (
    <DialogTrigger>
      <Button className="button button--small button--quiet round__marks" aria-label="What the marks mean">
        ?
      </Button>
      <Popover className="popover" aria-label="What the marks mean">
        <dl className="popover__inside marks">
          {VERDICTS.map(([verdict, words]) => (
            <div key={verdict} className="marks__row">
              <dt className={`bead__verdict bead__verdict--${verdict}`}>{VERDICT_MARKS[verdict]}</dt>
              <dd>{words}</dd>
            </div>
          ))}
          {SEVERITIES.map(([severity, words]) => (
            <div key={severity} className="marks__row">
              <dt>
                <SeverityMark severity={severity} words="" />
              </dt>
              <dd>{words}</dd>
            </div>
          ))}
        </dl>
      </Popover>
    </DialogTrigger>
  );
});
