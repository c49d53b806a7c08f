import { SETTINGS, type SettingGroup } from '@loopwright/model';
import type { FindingView } from './findings-view.ts';

export type FindingGrouping = 'severity' | 'hole' | 'subject';
/** `listed`: most severe first, then in playing order. `furthest`: furthest past its limit first. */
export type FindingOrder = 'listed' | 'furthest';

export interface FindingGroup {
  readonly key: string;
  readonly title: string;
  readonly findings: readonly FindingView[];
}

const SUBJECTS: Readonly<Record<SettingGroup, string>> = {
  card: 'Card',
  walk: 'Walks',
  clearance: 'Clearance',
  direction: 'Direction',
  rhythm: 'Rhythm',
};

/** How far past its limit, as a share of the limit; a limit of 0 counts in metres. */
export function pastLimit({ measured, limit }: { readonly measured: number; readonly limit: number }): number {
  return Math.abs(measured - limit) / (limit === 0 ? 1 : Math.abs(limit));
}

/**
 * The findings under headings. A finding about two holes stands under both; groups follow severity, playing order or
 * subject. Ties by key.
 */
export function groupFindings(
  findings: readonly FindingView[],
  grouping: FindingGrouping,
  order: FindingOrder,
): readonly FindingGroup[] {
  const sorted = order === 'listed' ? findings : [...findings].sort(furthestFirst);
  const groups = new Map<string, FindingView[]>();
  for (const finding of sorted) {
    for (const title of titlesOf(finding, grouping)) {
      const group = groups.get(title);
      if (group) group.push(finding);
      else groups.set(title, [finding]);
    }
  }
  const titles = [...groups.keys()];
  if (grouping === 'hole') titles.sort(byNumber);
  if (grouping === 'severity') titles.sort((a, b) => SEVERITY_TITLES.indexOf(a) - SEVERITY_TITLES.indexOf(b));
  return titles.map((title) => ({ key: title, title, findings: groups.get(title) ?? [] }));
}

const SEVERITIES = ['stop', 'look', 'mention'];
const capital = (word: string) => word.slice(0, 1).toUpperCase() + word.slice(1);
const SEVERITY_TITLES = SEVERITIES.map(capital);

function titlesOf({ finding, holes }: FindingView, grouping: FindingGrouping): readonly string[] {
  if (grouping === 'severity') return [capital(finding.severity)];
  if (grouping === 'subject') return [SUBJECTS[SETTINGS[finding.setting].group]];
  return holes.length > 0 ? [...new Set(holes.map((number) => `Hole ${number}`))] : ['The round'];
}

function furthestFirst(first: FindingView, second: FindingView): number {
  return pastLimit(second.finding) - pastLimit(first.finding) || (first.key < second.key ? -1 : 1);
}

/** 'Hole 2' before 'Hole 10', spare holes after, 'The round' last. */
function byNumber(first: string, second: string): number {
  const [a, b] = [first, second].map(
    (title) => Number(title.replace('Hole ', '')) || (title === 'The round' ? 1e6 : 1e5),
  );
  return (a ?? 0) - (b ?? 0);
}

/** '2 stop · 5 look · 11 mention · 3 decided'. */
export function countWords(findings: readonly FindingView[]): string {
  const counted = SEVERITIES.map(
    (word) => [findings.filter(({ severity }) => severity === word).length, word] as const,
  );
  const decided = findings.filter(({ state }) => state === 'decided').length;
  return [...counted, [decided, 'decided'] as const]
    .filter(([count]) => count > 0)
    .map(([count, word]) => `${count} ${word}`)
    .join(' · ');
}
