import './features-file.css';
import { type CoordinateReading, MAP_UNITS, type MapUnit } from '@loopwright/formats';
import { type ReactNode, useState } from 'react';
import { Button, Heading } from 'react-aria-components';
import { ImportNotes } from '../home/ImportNotes.tsx';
import { Sheet } from '../style/Sheet.tsx';
import { countsOf, type FeaturesStep, featuresWords, readingOf } from './features-step.ts';

interface FeaturesSheetProps {
  readonly step: FeaturesStep;
  readonly onSaid: (coordinates: CoordinateReading) => void;
  readonly onAdd: () => void;
  readonly onClose: () => void;
}

/** A file of features on its way to the board: how its numbers are meant, what is in it, what was left out and why. */
export function FeaturesSheet({ step, onSaid, onAdd, onClose }: FeaturesSheetProps) {
  return (
    <Sheet onClose={onClose}>
      <div className="sheet features-file">
        <Heading slot="title">What lies on the land</Heading>
        {step.at === 'reading' && (
          <Step does={null} onClose={onClose} leave="Stop">
            <p role="status">Reading {step.file} …</p>
          </Step>
        )}
        {step.at === 'unreadable' && (
          <Step does={null} onClose={onClose} leave="Back to the board">
            <p className="problem" role="alert">
              {step.file}: {step.why}
            </p>
          </Step>
        )}
        {step.at === 'asking' && <WhichCoordinates step={step} onSaid={onSaid} onClose={onClose} />}
        {step.at === 'ready' && (
          <Step
            onClose={onClose}
            leave="Leave it"
            does={
              <Button className="button button--main" autoFocus onPress={onAdd}>
                Add {featuresWords(step.read.features.length)}
              </Button>
            }
          >
            <Counts step={step} />
            <ImportNotes notes={step.read.notes} />
          </Step>
        )}
      </div>
    </Sheet>
  );
}

interface StepProps extends Pick<FeaturesSheetProps, 'onClose'> {
  readonly does: ReactNode;
  readonly leave: string;
  readonly children: ReactNode;
}

function Step({ does, leave, onClose, children }: StepProps) {
  return (
    <>
      {children}
      <div className="row">
        {does}
        <Button className="button" onPress={onClose}>
          {leave}
        </Button>
      </div>
    </>
  );
}

function Counts({ step }: { readonly step: Extract<FeaturesStep, { at: 'ready' }> }) {
  return (
    <table className="table" aria-label={`Features in ${step.file}`}>
      <thead>
        <tr>
          <th scope="col" className="table__words">
            kind
          </th>
          <th scope="col">how many</th>
        </tr>
      </thead>
      <tbody>
        {countsOf(step.read.features).map(({ kind, count }) => (
          <tr key={kind}>
            <th scope="row">{kind}</th>
            <td>{count}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const MEANS: Readonly<Record<CoordinateReading['as'], string>> = {
  'longitude and latitude': 'longitude and latitude',
  'site plane': 'distances from the origin of this site’s plane',
  'survey grid': 'easting and northing in a survey grid',
};

interface WhichProps extends Pick<FeaturesSheetProps, 'onSaid' | 'onClose'> {
  readonly step: Extract<FeaturesStep, { at: 'asking' }>;
}

function WhichCoordinates({ step, onSaid, onClose }: WhichProps) {
  const [as, setAs] = useState<CoordinateReading['as']>(step.readings[0] ?? 'longitude and latitude');
  const [unit, setUnit] = useState<MapUnit>('metres');
  return (
    <Step
      onClose={onClose}
      leave="Leave it"
      does={
        <Button className="button button--main" onPress={() => onSaid(readingOf(as, unit))}>
          Go on
        </Button>
      }
    >
      <p>{step.why}</p>
      <fieldset className="features-file__which">
        <legend className="field__label">The numbers are</legend>
        {step.readings.map((each) => (
          <label key={each} className="features-file__choice">
            <input type="radio" name="coordinates" checked={as === each} onChange={() => setAs(each)} />
            {MEANS[each]}
          </label>
        ))}
      </fieldset>
      {as !== 'longitude and latitude' && (
        <label className="field">
          <span className="field__label">in</span>
          <select
            className="input"
            value={unit}
            onChange={({ target }) => {
              const chosen = MAP_UNITS.find((each) => each === target.value);
              if (chosen) setUnit(chosen);
            }}
          >
            {MAP_UNITS.map((each) => (
              <option key={each}>{each}</option>
            ))}
          </select>
        </label>
      )}
    </Step>
  );
}
