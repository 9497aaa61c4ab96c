import { cpSync } from 'node:fs';

const dist = 'node_modules/quilt-reckoner/dist';
for (const path of ['quilt-backing.js', 'chunks'])
  cpSync(`${dist}/${path}`, `scripts/${path}`, { recursive: true });
