import { installPackages } from './run.mjs';
import { serve } from './serve.mjs';

installPackages();
const { default: buildIfStale } = await import('./fresh-dist.mjs');
await buildIfStale();
const { address } = await serve(Number(process.env.PORT) || 8080);
console.log(`Quilt Reckoner is at ${address}/`);
