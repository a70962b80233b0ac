// `npm start`: installs what is missing, builds, and serves the app on this machine. PORT chooses the port.
import { join } from 'node:path';
import { serve } from './serve.mjs';
import { installPackages, ROOT } from './setup.mjs';

installPackages();
const { build } = await import('./build.mjs');
const folder = await build(join(ROOT, 'dist'));
const { address } = await serve({ folder, port: Number(process.env.PORT ?? 4173) });
console.log(`\nHemling is at ${address}  (Ctrl+C stops it)`);
