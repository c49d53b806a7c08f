import { expect, test } from 'vitest';
import { kindOf } from './kind-of.ts';

test.each([
  [{ golf: 'hole' }, { is: 'hole' }],
  [{ golf: 'lateral_water_hazard' }, { is: 'feature', kind: 'water' }],
  [
    { golf: 'bunker', natural: 'sand' },
    { is: 'feature', kind: 'bunker' },
  ],
  [{ golf: 'clubhouse', building: 'yes' }, { is: 'clubhouse' }],
  [{ leisure: 'golf_course' }, { is: 'boundary' }],
  [{ natural: 'wood' }, { is: 'feature', kind: 'trees' }],
  [{ building: 'house' }, { is: 'feature', kind: 'building' }],
  [
    { highway: 'service', golf: 'cartpath' },
    { is: 'feature', kind: 'course path' },
  ],
  [{ highway: 'service' }, { is: 'feature', kind: 'public road' }],
  [
    { highway: 'service', access: 'private' },
    { is: 'feature', kind: 'course path' },
  ],
  [
    { highway: 'residential', access: 'private' },
    { is: 'feature', kind: 'public road' },
  ],
  [{ highway: 'footway' }, { is: 'feature', kind: 'public path' }],
  [
    { highway: 'path', golf: 'path' },
    { is: 'feature', kind: 'course path' },
  ],
  [{ highway: 'street_lamp' }, { is: 'unknown' }],
  [{ natural: 'sand' }, { is: 'unknown' }],
  [{ golf: 'pin' }, { is: 'left out', what: 'pin' }],
  [
    { waterway: 'stream', tunnel: 'culvert' },
    { is: 'left out', what: 'way or stream under the ground' },
  ],
  [{ golf: '__proto__' }, { is: 'unknown' }],
])('%j is %j', (tags, kind) => {
  expect(kindOf(tags)).toEqual(kind);
});
