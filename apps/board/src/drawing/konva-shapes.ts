/**
 * The shapes the drawing uses, and no others: the whole library would be a third more to load.
 * A shape is registered by being imported; react-konva then finds it by name.
 */
import 'konva/lib/shapes/Circle.js';
import 'konva/lib/shapes/Line.js';
import 'konva/lib/shapes/Path.js';
import 'konva/lib/shapes/Rect.js';
import 'konva/lib/shapes/RegularPolygon.js';
import 'konva/lib/shapes/Text.js';

export {
  Circle,
  Group,
  Layer,
  Line,
  Path,
  Rect,
  RegularPolygon,
  Shape,
  Stage,
  Text,
} from 'react-konva/lib/ReactKonvaCore';
