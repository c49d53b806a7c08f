import { type LengthUnit, SETTINGS } from '@loopwright/model';
import { memo } from 'react';
import { Button, Input, Label, NumberField, Text } from 'react-aria-components';
import type { DoEdit } from '../../board/parts.ts';
import { settingFromField } from '../../reading/setting-words.ts';
import { saysTheSame } from '../../reading/steady.ts';
import type { LimitView } from './limits-view.ts';

interface LimitRowProps {
  readonly limit: LimitView;
  readonly units: LengthUnit;
  readonly edit: DoEdit;
}

/** One limit: its field in the reader's unit, its default, and where the default comes from. */
export const LimitRow = memo(function LimitRow({ limit, units, edit }: LimitRowProps) {
  const change = (typed: number) => {
    if (Number.isNaN(typed) || typed === limit.value) return;
    const value = settingFromField(typed, SETTINGS[limit.key].unit, units);
    edit({ edit: 'change setting', setting: limit.key, value });
  };
  return (
    <li className={`limit${limit.changed ? ' limit--changed' : ''}`}>
      <NumberField
        className="limit__field"
        value={limit.value}
        minValue={limit.least}
        maxValue={limit.most}
        step={limit.step}
        onChange={change}
      >
        <Label className="limit__label">{limit.label}</Label>
        <Input className="input input--figure limit__input" />
        <span className="limit__unit">{limit.unit}</span>
        <Text slot="description" className="small soft limit__source">
          {limit.changed ? `Default ${limit.usual}. ` : ''}
          {limit.source} <i>({limit.status})</i>
        </Text>
      </NumberField>
      <Button
        className="button button--small button--quiet limit__reset"
        isDisabled={!limit.changed}
        aria-label={`Back to the default, ${limit.usual}: ${limit.label}`}
        onPress={() => edit({ edit: 'change setting', setting: limit.key, value: 'default' })}
      >
        ↺
      </Button>
    </li>
  );
}, saysTheSame);
