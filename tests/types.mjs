// Checks the types of every package and of the tests, each with its own libraries (the pure ones without DOM and Node).
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';

const folders = ['packages', 'apps'].flatMap((parent) => readdirSync(parent).map((name) => `${parent}/${name}`));
const projects = [...folders, 'tests'].filter((folder) => existsSync(`${folder}/tsconfig.json`));
let failed = 0;
for (const project of projects) {
  const { status } = spawnSync('npx', ['tsc', '-p', project], { stdio: 'inherit' });
  if (status !== 0) {
    failed += 1;
    console.error(`types: ${project} does not check`);
  }
}
process.exit(failed === 0 ? 0 : 1);
