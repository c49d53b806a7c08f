/** 'deg' only here and at the edges: settings are read by people; the analysis turns them into cosines. */
export type SettingUnit = 'm' | 'deg' | 'count' | 'share' | 'm/s' | 'min' | 'm per m' | 'ratio';

/** How sure a figure is, in the words of the reference values. */
export type SourceStatus = 'published' | 'published, second hand' | 'common practice' | 'calibrated' | 'definition';

export type SettingGroup = 'card' | 'walk' | 'clearance' | 'direction' | 'rhythm';

export interface SettingDefinition {
  readonly group: SettingGroup;
  /** In the trade's words, as the page shows it. */
  readonly label: string;
  readonly default: number;
  readonly unit: SettingUnit;
  readonly least: number;
  readonly most: number;
  /** Where the default comes from, in words a client can read. */
  readonly source: string;
  readonly status: SourceStatus;
  /** True where somebody can be hurt: the caution is shown beside it. */
  readonly safety?: true;
}
