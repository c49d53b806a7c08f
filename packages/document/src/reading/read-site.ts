import {
  type Boundary,
  isSettingKey,
  type LengthUnit,
  LIMITS,
  parseBoundary,
  parseGrid,
  parseLengthUnit,
  parseLines,
  parseLocation,
  parseName,
  parseNumber,
  parseSettingValue,
  type SettingKey,
  type SettingOverrides,
  type SiteLocation,
  type SurveyGrid,
} from '@loopwright/model';
import type { Parts } from '../cells.ts';
import { frozen } from '../plain-value.ts';
import { partReader, type Read } from './part-reader.ts';

/** What is decided about the site as a whole. */
export interface SiteFrame {
  readonly name: string;
  readonly north: number;
  readonly location?: SiteLocation;
  readonly boundary?: Boundary;
  readonly note?: string;
  readonly units?: LengthUnit;
  readonly grid?: SurveyGrid;
}

/** The site without the things on it. It is always there, if only as bare land without a name. */
export function readSiteFrame(_group: string, parts: Parts): Read<SiteFrame> {
  const reader = partReader(parts);
  const location = reader.take('location', parseLocation);
  const boundary = reader.take('boundary', parseBoundary);
  const units = reader.take('units', parseLengthUnit);
  const grid = reader.take('grid', parseGrid);
  const note = reader.take('note', (value) => parseLines(value, LIMITS.note));
  const value: SiteFrame = {
    name: reader.take('name', (name) => parseName(name, LIMITS.name)) ?? 'Unnamed site',
    north: reader.take('north', (north) => parseNumber(north, -7, 7)) ?? 0,
    ...(location && { location }),
    ...(boundary && { boundary }),
    ...(note && { note }),
    ...(units && { units }),
    ...(grid && { grid }),
  };
  return { value: frozen(value), order: '', unread: reader.unread() };
}

/** The limits this board has changed. A setting this page does not know is reported, and its own default holds. */
export function readSettings(_group: string, parts: Parts): Read<SettingOverrides> {
  const reader = partReader(parts);
  const settings: { [Key in SettingKey]?: number } = {};
  for (const { part } of reader.startingWith('')) {
    const number = reader.take(part, (value) => (isSettingKey(part) ? parseSettingValue(part, value) : undefined));
    if (number !== undefined && isSettingKey(part)) settings[part] = number;
  }
  return { value: frozen(settings), order: '', unread: reader.unread() };
}
