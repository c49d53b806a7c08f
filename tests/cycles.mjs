// Import cycles, from every public entry. Exits non-zero and names the cycle if there is one.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';

const entries = [
  ...readdirSync('packages').flatMap((name) =>
    ['src/index.ts', 'src/client/index.ts', 'src/server/index.ts', 'src/wording/index.ts'].map(
      (file) => `packages/${name}/${file}`,
    ),
  ),
  'apps/board/src/main.tsx',
  'apps/server/src/main.ts',
  'apps/cli/src/main.ts',
].filter(existsSync);
const { status } = spawnSync(
  'npx',
  ['dpdm', '--no-tree', '--no-warning', '--progress=false', '--exit-code', 'circular:1', ...entries],
  { stdio: 'inherit' },
);
process.exit(status ?? 1);
