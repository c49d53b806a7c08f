import { seededRandom } from '@loopwright/model';
import { openAuthorship, openNetwork, openPeer } from '@loopwright/testkit';
import { openSimulatedServer } from './simulated-server.ts';

/** People on one board whose lines and store take their time. */
export function openBoard(seed: number, memberships: readonly string[]) {
  const random = seededRandom(seed);
  const server = openSimulatedServer(random);
  const network = openNetwork({ random, accept: server.accept });
  const authorship = openAuthorship();
  const peers = memberships.map((membership, index) =>
    openPeer({ name: `p${index}`, membership, client: 100 + index, network, random, authorship }),
  );
  const close = () => {
    for (const { connection, plan } of peers) {
      connection.close();
      plan.close();
    }
    server.close();
  };
  return { server, network, peers, close };
}
