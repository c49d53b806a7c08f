import { openPlan } from '@loopwright/document';
import { type Plan, seededRandom } from '@loopwright/model';
import {
  differing,
  lostInAFile,
  lostOrDoubled,
  type Network,
  openAuthorship,
  openNetwork,
  openPeer,
  type Peer,
  pick,
  ROGUE_GREETING,
  rogueFrame,
} from '@loopwright/testkit';
import { HOLES } from './board-plan.ts';
import { openSimulatedServer } from './simulated-server.ts';

/** Moves every timer, and lets what waits for promises go on. */
export type Advance = (milliseconds: number) => Promise<unknown>;

const STEPS = 40;
/** Simulated time in which everybody must be saved once the network is whole again. */
const HEALING_SECONDS = 90;

interface Scene {
  readonly random: () => number;
  readonly network: Network;
  readonly server: ReturnType<typeof openSimulatedServer>;
  readonly peers: readonly Peer[];
  readonly rogue: () => void;
}

/** A foreign program on the board: says rubbish, and comes back under another number when it is thrown out. */
function openRogue(network: Network, random: () => number): () => void {
  let client = 900_000;
  let clock = 0;
  let socket: WebSocket | undefined;
  return () => {
    if (socket === undefined || socket.readyState > socket.OPEN) {
      client += 1;
      clock = 0;
      const fresh = new network.socket('ws://simulated/sync/board/rogue/plan');
      fresh.onopen = () => fresh.send(Uint8Array.from(ROGUE_GREETING));
      socket = fresh;
    } else if (socket.readyState === socket.OPEN) {
      socket.send(Uint8Array.from(rogueFrame(client, clock, pick(HOLES, random) ?? 'h1', random)));
      clock += 1;
    }
  };
}

function openScene(seed: number): Scene {
  const random = seededRandom(seed);
  const server = openSimulatedServer(random);
  const network = openNetwork({ random, accept: server.accept });
  const authorship = openAuthorship();
  const count = 3 + Math.floor(random() * 3);
  const peers = Array.from({ length: count }, (_, index) => {
    const isSecondTab = index === 1 && random() < 0.5;
    const isReader = index === 2 && random() < 0.2;
    const membership = isReader ? 'reader' : isSecondTab ? 'm0' : `m${index}`;
    const client = 1000 + Math.floor(random() * 1e6) * 10 + index;
    return openPeer({ name: `p${index}`, membership, client, network, random, authorship });
  });
  return { random, network, server, peers, rogue: openRogue(network, random) };
}

/** One thing that happens: mostly somebody does something, sometimes a line breaks, the server dies, a stranger shouts. */
function happen({ random, network, server, peers, rogue }: Scene): readonly string[] {
  const peer = pick(peers, random);
  const chance = random();
  if (!peer) return [];
  if (chance < 0.04) network.setDown(peer.membership, true);
  else if (chance < 0.1) network.setDown(peer.membership, false);
  else if (chance < 0.14) pick(network.links(), random)?.cut();
  else if (chance < 0.16) server.restart();
  else if (chance < 0.24) rogue();
  else if (peer.membership !== 'reader' || random() < 0.1) return peer.act();
  return [];
}

/** A page that says 'saved' has nothing that the store has not. */
function untruthful({ peers, server }: Scene): readonly string[] {
  return peers
    .filter((peer) => peer.connection.saved().kind === 'saved' && !server.holds(peer.plan.state()))
    .map(({ name }) => `${name} says saved, and is not`);
}

function planOf(state: Uint8Array): Plan {
  const plan = openPlan(state);
  const read = plan.read();
  plan.close();
  return read;
}

/** What must hold once everybody has been back for a while. */
function wrongAtTheEnd({ peers, server }: Scene): readonly string[] {
  const there = peers.filter((peer) => peer.closed() === undefined);
  const plans = new Map([
    ['server', planOf(server.state())],
    ...there.map(({ name, plan }) => [name, plan.read()] as const),
  ]);
  return [
    ...there.flatMap(({ name, connection }) => {
      const { kind } = connection.saved();
      return kind === 'saved' ? [] : [`${name} is ${kind} at the end`];
    }),
    ...differing(plans).map((name) => `${name} has another plan than the server`),
    ...lostInAFile(planOf(server.state())),
    ...[...plans].flatMap(([name, plan]) => lostOrDoubled(plan, 'a', HOLES).map((what) => `${name}: ${what}`)),
    ...peers.flatMap((peer) => {
      const closed = peer.closed();
      if (closed === undefined) return [];
      const isRight = peer.membership === 'reader' && closed.code === 4403 && closed.draft !== undefined;
      return isRight ? [] : [`${peer.name} was closed with ${closed.code}`];
    }),
    ...there.flatMap(({ name, connection }) =>
      connection.presence.others().some(({ drag }) => drag !== undefined) ? [`${name} still sees a drag`] : [],
    ),
  ];
}

/** Plays one seed. What went wrong, in words; nothing when all is well. */
export async function playSeed(seed: number, advance: Advance): Promise<readonly string[]> {
  const scene = openScene(seed);
  const wrong: string[] = [];
  await advance(1000);
  for (let step = 0; step < STEPS; step++) {
    wrong.push(...happen(scene), ...untruthful(scene));
    await advance(Math.floor(scene.random() * 250));
  }
  for (const { membership } of scene.peers) scene.network.setDown(membership, false);
  const isSettled = () => scene.peers.every(({ connection }) => ['saved', 'closed'].includes(connection.saved().kind));
  for (let second = 0; second < HEALING_SECONDS && !isSettled(); second++) await advance(1000);
  await advance(4000);
  wrong.push(...untruthful(scene), ...wrongAtTheEnd(scene));
  for (const { connection, plan } of scene.peers) {
    connection.close();
    plan.close();
  }
  scene.server.close();
  return wrong;
}
