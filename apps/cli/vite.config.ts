import { defineConfig } from 'vite';

/** One file that needs nothing beside it: whoever copies it can run it. */
export default defineConfig({
  build: { ssr: 'src/main.ts', outDir: 'dist', emptyOutDir: false, target: 'node20', sourcemap: true },
  ssr: { noExternal: true },
});
