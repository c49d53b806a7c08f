import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** The packages a lock file speaks of, path to version; those for other machines left out. */
function packagesIn(lockFile) {
  const { packages = {} } = JSON.parse(readFileSync(lockFile, 'utf8'));
  const wanted = Object.entries(packages).filter(
    ([path, entry]) => path.includes('node_modules/') && !entry.link && !entry.optional && !entry.devOptional,
  );
  return new Map(wanted.map(([path, entry]) => [path, entry.version]));
}

/** Whether node_modules holds what the lock file asks for: compared by version, since file times lie after a clone or a pull. */
export function isInstalled(root) {
  const note = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(note)) return false;
  const have = packagesIn(note);
  return [...packagesIn(join(root, 'package-lock.json'))].every(([path, version]) => have.get(path) === version);
}
