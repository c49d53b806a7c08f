import { SAFETY_CAUTION, severityWord } from '@loopwright/analysis/wording';
import type { FindingReport, Report } from '../report/report.ts';
import { hanging, wrapped } from './wrapped.ts';

const SEVERITIES = ['stop', 'look', 'mention'] as const;

/** The findings, the most severe first, each with its source, and the caution that goes with all of them. */
export function findingLines({ findings }: Report, width: number): readonly string[] {
  const lines = SEVERITIES.flatMap((severity) => {
    const own = findings.filter((finding) => finding.severity === severity);
    if (own.length === 0) return [];
    return [`${severityWord(severity)} (${own.length})`, ...own.flatMap((finding) => findingText(finding, width)), ''];
  });
  const nothing = ['Nothing lies beyond its limit.', ''];
  return [...(findings.length === 0 ? nothing : lines), ...wrapped(SAFETY_CAUTION, width)];
}

function findingText({ text, source }: FindingReport, width: number): readonly string[] {
  return [...hanging('  · ', text, width), ...hanging('    ', `Source: ${source}`, width)];
}
