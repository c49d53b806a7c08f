import { Counter, Gauge, Histogram, Registry } from 'prom-client';

/** What the server counts about itself. */
export interface Metrics {
  readonly registry: Registry;
  readonly connections: Gauge;
  readonly rooms: Gauge;
  readonly storeRefusing: Gauge;
  readonly updates: Counter<'outcome'>;
  readonly commitSeconds: Histogram;
  readonly commits: Counter;
  readonly framesSent: Counter<'kind'>;
  readonly framesDropped: Counter<'kind'>;
  readonly closed: Counter<'code'>;
}

/** A set of counters of its own for each server, so that two in one process do not mix. */
export function makeMetrics(): Metrics {
  const registry = new Registry();
  const registers = [registry];
  return {
    registry,
    connections: new Gauge({ name: 'loopwright_connections', help: 'Open WebSocket connections', registers }),
    rooms: new Gauge({ name: 'loopwright_rooms', help: 'Rooms in memory', registers }),
    storeRefusing: new Gauge({
      name: 'loopwright_store_refusing_rooms',
      help: 'Rooms whose last commit failed and is being tried again',
      registers,
    }),
    updates: new Counter({
      name: 'loopwright_updates_total',
      help: 'Updates offered to rooms, by what came of them',
      labelNames: ['outcome'],
      registers,
    }),
    commitSeconds: new Histogram({
      name: 'loopwright_commit_seconds',
      help: 'How long the store took for a commit',
      buckets: [0.001, 0.003, 0.01, 0.03, 0.1, 0.3, 1, 3],
      registers,
    }),
    commits: new Counter({ name: 'loopwright_commits_total', help: 'Transactions that stored updates', registers }),
    framesSent: new Counter({
      name: 'loopwright_frames_sent_total',
      help: 'WebSocket messages sent',
      labelNames: ['kind'],
      registers,
    }),
    framesDropped: new Counter({
      name: 'loopwright_frames_dropped_total',
      help: 'Presence not passed on, to a slow reader or past the rate',
      labelNames: ['kind'],
      registers,
    }),
    closed: new Counter({
      name: 'loopwright_closed_total',
      help: 'Connections closed by the server, by close code',
      labelNames: ['code'],
      registers,
    }),
  };
}
