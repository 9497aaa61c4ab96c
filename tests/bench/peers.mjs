import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ROOT } from '../tools/run.mjs';

/** Programs that ours is compared with, in the versions that its goals were set by. None is part of this project. */
const WANTED = { 'jspreadsheet-ce': '4.15.0', mathjs: '15.2.0', hyperformula: '3.5.0' };

/** Outside the project, and kept from one run to the next. */
export const PEERS = join(tmpdir(), 'quilt-bench-peers');

const versionIn = (folder, name) => {
  try {
    return JSON.parse(readFileSync(join(folder, 'node_modules', name, 'package.json'), 'utf8')).version;
  } catch {
    return undefined;
  }
};

/** The version of a package that the project has. */
export const ownVersion = (name) => versionIn(ROOT, name);
/** The version of a peer, if it is there. */
export const peerVersion = (name) => versionIn(PEERS, name);

const missing = () => Object.keys(WANTED).filter((name) => peerVersion(name) !== WANTED[name]);

/** Installs the peers that are missing; says which still are. */
export const installPeers = () => {
  if (missing().length === 0) return [];
  console.error(`Installing ${missing().join(', ')} in ${PEERS}`);
  mkdirSync(PEERS, { recursive: true });
  writeFileSync(join(PEERS, 'package.json'), JSON.stringify({ private: true, dependencies: WANTED }));
  spawnSync('npm', ['install', '--ignore-scripts', '--no-audit', '--no-fund'], {
    cwd: PEERS,
    stdio: ['ignore', 'ignore', 'inherit'],
    shell: process.platform === 'win32',
  });
  return missing();
};

/** A peer as a module of this process; undefined where it could not be installed. */
export const peer = (name) =>
  peerVersion(name) === WANTED[name] ? createRequire(join(PEERS, 'peers.js'))(name) : undefined;

export const isThere = (name) => peerVersion(name) === WANTED[name];
export const PEER_NAMES = [...Object.keys(WANTED), 'jsuites', '@jspreadsheet/formula'];
