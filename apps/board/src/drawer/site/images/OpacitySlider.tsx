import type { ImageLayerId } from '@loopwright/model';
import { useEffect, useState } from 'react';
import { Label, Slider, SliderOutput, SliderThumb, SliderTrack } from 'react-aria-components';
import type { DrawerProps } from '../../../board/parts.ts';
import { opacityEdit } from './images-view.ts';

interface OpacitySliderProps extends Pick<DrawerProps, 'edit' | 'preview'> {
  readonly id: ImageLayerId;
  readonly name: string;
  /** 0 to 100. */
  readonly value: number;
}

/** How strongly a picture shows: seen by everybody while it slides, written once when it is let go. */
export function OpacitySlider({ id, name, value, edit, preview }: OpacitySliderProps) {
  const [sliding, setSliding] = useState<number>();
  // What was let go stands until it comes back written: the next key counts on from it.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the written value is what it waits for
  useEffect(() => setSliding(undefined), [value]);
  return (
    <Slider
      className="opacity"
      aria-label={`Opacity of ${name}`}
      value={sliding ?? value}
      minValue={0}
      maxValue={100}
      step={5}
      onChange={(next) => {
        setSliding(next);
        preview(opacityEdit(id, next));
      }}
      onChangeEnd={(next) => {
        preview(undefined);
        if (next !== value) edit(opacityEdit(id, next));
      }}
    >
      <Label className="small">Opacity</Label>
      <SliderTrack className="opacity__track">
        <SliderThumb className="opacity__thumb" />
      </SliderTrack>
      <SliderOutput className="small opacity__figure">{() => `${sliding ?? value} %`}</SliderOutput>
    </Slider>
  );
}
