// 200 people on one board, 4 of them dragging at 25 a second: delivery and server CPU, ours against @y/websocket-server.
//
//   node tests/load/run.mjs [people] [seconds]
//
// Loopback only; starts its own servers and clients, and stops them; under a minute with the defaults.
import { fork, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { cpus, tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { buildTargets, staleTargets } from '../../apps/server/build.mjs';

const HERE = dirname(fileURLToPath(import.meta.url));
const ROOT = join(HERE, '..', '..');
const PEOPLE = Number(process.argv[2] ?? 200);
const SECONDS = Number(process.argv[3] ?? 8);
const DRAGGERS = 4;
const EVERY = 40;
const PROCESSES = 4;
/** Whatever hangs, this ends it. */
const LONGEST = 120_000;

const BUNDLE = join(ROOT, 'node_modules', '.cache', 'loopwright-load');
const children = new Set();

function child(process_) {
  children.add(process_);
  process_.once('exit', () => children.delete(process_));
  return process_;
}

const message = (from, kind) =>
  new Promise((resolve) => {
    const listen = (value) => {
      if (value.kind !== kind) return;
      from.off('message', listen);
      resolve(value);
    };
    from.on('message', listen);
  });

const wait = (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds));

/** Processor time of a process so far, in seconds (Linux: /proc/PID/stat, fields 14 and 15, in ticks of 10 ms). */
function cpuSeconds(pid) {
  const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1].split(' ');
  return (Number(fields[11]) + Number(fields[12])) / 100;
}

async function startOurs() {
  const data = mkdtempSync(join(tmpdir(), 'loopwright-load-'));
  const server = child(
    spawn(process.execPath, [join(ROOT, 'apps/server/dist/main.js')], {
      env: { ...process.env, PORT: '0', HOST: '127.0.0.1', DATA_DIR: data },
      stdio: ['ignore', 'pipe', 'inherit'],
    }),
  );
  server.once('exit', () => rmSync(data, { recursive: true, force: true }));
  let said = '';
  for await (const part of server.stdout) {
    said += part;
    if (/#\S+\n/.test(said)) break;
  }
  const [, port, board, secret] = /:(\d+)\/b\/(\w+)#(\S+)/.exec(said);
  const answer = await fetch(`http://127.0.0.1:${port}/api/boards/${board}/enter`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ secret, name: 'Crowd' }),
  });
  const cookie = answer.headers.get('set-cookie').split(';')[0];
  const { membership } = await answer.json();
  return { server, url: `ws://127.0.0.1:${port}/sync/${board}/${membership}`, room: 'plan', cookie };
}

async function startRival() {
  const server = child(fork(join(HERE, 'rival.mjs'), [], { stdio: ['ignore', 'ignore', 'inherit', 'ipc'] }));
  const { port } = await message(server, 'listening');
  return { server, url: `ws://127.0.0.1:${port}`, room: 'board', cookie: '' };
}

function quantile(sorted, share) {
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

async function measure(name, start, manners) {
  const { server, ...where } = await start();
  const crowd = Array.from({ length: PROCESSES }, (_, index) => {
    const orders = { ...where, manners, people: Math.ceil(PEOPLE / PROCESSES), draggers: index < DRAGGERS ? 1 : 0 };
    return child(fork(join(BUNDLE, 'people.js'), [JSON.stringify(orders)], { serialization: 'advanced' }));
  });
  await Promise.all(crowd.map((people) => message(people, 'joined')));
  await wait(2000);
  for (const people of crowd) people.send({ kind: 'drag', every: EVERY });
  await wait(1000);
  const before = cpuSeconds(server.pid);
  await wait(SECONDS * 1000);
  const cpu = (cpuSeconds(server.pid) - before) / SECONDS;
  const answers = crowd.map((people) => message(people, 'seen'));
  for (const people of crowd) people.send({ kind: 'rest' });
  const delays = (await Promise.all(answers)).flatMap((answer) => answer.delays).sort((a, b) => a - b);
  for (const people of crowd) people.disconnect();
  server.kill('SIGKILL');
  return { name, seen: delays.length, p50: quantile(delays, 0.5), p99: quantile(delays, 0.99), cpu };
}

function report(rows) {
  console.log(
    `${PEOPLE} people, ${DRAGGERS} dragging at ${1000 / EVERY} a second, ${SECONDS} s; ${cpus()[0].model} × ${cpus().length}`,
  );
  for (const { name, seen, p50, p99, cpu } of rows)
    console.log(
      `${name.padEnd(42)} p50 ${p50.toFixed(1).padStart(6)} ms   p99 ${p99.toFixed(1).padStart(6)} ms   ` +
        `server ${(cpu * 100).toFixed(0).padStart(3)} % of a core   ${seen} deliveries, ` +
        `${((cpu * SECONDS * 1e6) / seen).toFixed(1)} µs each`,
    );
  const [ours, , rival] = rows;
  const each = (row) => row.cpu / row.seen;
  console.log(`server CPU, ours ÷ rival: ${(ours.cpu / rival.cpu).toFixed(2)} (budget 0.50)`);
  console.log(`server CPU for each delivery, ours ÷ rival: ${(each(ours) / each(rival)).toFixed(2)}`);
  if (rival.seen < ours.seen / 2)
    console.log('The rival delivered less than half as much in the same time: compare the CPU of each delivery.');
  console.log(`p99 delivery, ours: ${ours.p99.toFixed(1)} ms (budget 40 ms)`);
}

const end = setTimeout(() => {
  console.error('The load run took too long and was stopped.');
  for (const process_ of children) process_.kill('SIGKILL');
  process.exit(1);
}, LONGEST);

await buildTargets(staleTargets(['server']));
await build({
  configFile: false,
  root: ROOT,
  logLevel: 'error',
  build: { ssr: join(HERE, 'people.ts'), outDir: BUNDLE, emptyOutDir: true, target: 'node20' },
  ssr: { noExternal: true },
  resolve: { alias: { ws: createRequire(join(ROOT, 'apps/server/package.json')).resolve('ws') } },
});
const rows = [
  await measure('ours, our page’s manners', startOurs, 'own words only'),
  await measure('ours, stock clients', startOurs, 'stock'),
  await measure('@y/websocket-server 0.1.1, stock clients', startRival, 'stock'),
];
report(rows);
clearTimeout(end);
