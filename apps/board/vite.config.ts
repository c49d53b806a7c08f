import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { pageKeptOffline } from './page-kept-offline.ts';

/** The page is built into `dist`, from where the server serves it; `LOOPWRIGHT_SERVER` is the one behind `vite dev`. */
const server = process.env.LOOPWRIGHT_SERVER ?? 'http://127.0.0.1:8480';

export default defineConfig({
  root: import.meta.dirname,
  plugins: [react(), pageKeptOffline(import.meta.dirname)],
  server: {
    proxy: { '/api': server, '/sync': { target: server, ws: true } },
  },
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    target: 'es2023',
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 1200,
  },
});
