import { compareAnalyses } from '@loopwright/analysis';
import { useEffect, useState } from 'react';
import type { BoardSession } from '../live/board-session.ts';
import { type FindingNews, openFindingNews } from '../live/finding-news.ts';
import { findingsHeard } from '../reading/findings-heard.ts';
import { namesOf } from '../reading/names.ts';
import type { Reading } from './parts.ts';

interface FindingsHeardProps {
  readonly session: Pick<BoardSession, 'frame'>;
  readonly reading: Reading;
  /** Whoever hid the findings is not told of them. */
  readonly findingsShown: boolean;
}

/** Tells those who listen which findings came and went. */
export function FindingsHeard({ session, reading, findingsShown }: FindingsHeardProps) {
  const [news, setNews] = useState<FindingNews>();
  useEffect(() => {
    const opened = openFindingNews({
      frame: session.frame,
      compare: (before, after) => compareAnalyses(before, after).findings,
      after: (milliseconds, work) => {
        const timer = setTimeout(work, milliseconds);
        return () => clearTimeout(timer);
      },
    });
    const unwatch = opened.news.onChange(() => setNews(opened.news.get()));
    return () => {
      unwatch();
      opened.stop();
    };
  }, [session]);
  const words =
    news && findingsShown
      ? findingsHeard(news.changes, namesOf(news.frame.plan, news.frame.routing, reading.units))
      : '';
  return (
    <p className="only-heard" role="status" data-testid="findings-heard">
      {words}
    </p>
  );
}
