// SPDX-License-Identifier: MIT
// Cuts a program into a first and a second file: split(PROGRAM.wasm, ENTRIES.txt, FIRST.wasm, SECOND.wasm). The second has the functions
// named in ENTRIES and all that nobody else calls.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';

export const FEATURES = ['--enable-simd', '--enable-bulk-memory', '--enable-nontrapping-float-to-int', '--enable-sign-ext', '--enable-mutable-globals'];

const plain = name => name.replace(/\\([0-9a-f]{2})/g, (_, code) => String.fromCharCode(parseInt(code, 16)));

/** Who calls whom, and who is called from outside or through a pointer, as the text form of a module says. */
function read_calls(text) {
  const calls = new Map(), roots = new Set();
  let here = null;
  for (const line of text.split('\n')) {
    const begun = /^ \(func \$([^\s()]+)/.exec(line);
    if (begun) calls.set(begun[1], here = new Set());
    else if (line.startsWith(' (elem')) for (const [, name] of line.matchAll(/\$([^\s()]+)/g)) roots.add(name);
    else if (line.startsWith(' (export') && line.includes('(func ')) roots.add(/\(func \$([^\s()]+)\)/.exec(line)[1]);
    else if (here) for (const [, name] of line.matchAll(/\((?:call|ref\.func) \$([^\s()]+)/g)) here.add(name);
  }
  return { calls, roots };
}

export function split(program, entries_file, first, second) {
  const wanted = fs.readFileSync(entries_file, 'utf8').split('\n').filter(line => line && !line.startsWith('#'));
  const { calls, roots } = read_calls(execFileSync('wasm-dis', [program], { encoding: 'utf8', maxBuffer: 1 << 30 }));
  const entries = new Set();
  for (const name of wanted) {
    const found = [...calls.keys()].filter(key => plain(key).startsWith(name));
    if (!found.length) throw new Error(`${entries_file}: the program has no function ${name}…)`);
    for (const key of found) entries.add(key);
  }
  const kept = new Set(), to_visit = [...roots];
  for (let name = to_visit.pop(); name !== undefined; name = to_visit.pop()) {
    if (kept.has(name) || entries.has(name)) continue;
    kept.add(name);
    to_visit.push(...(calls.get(name) || []));
  }
  const list = path.join(fs.mkdtempSync(path.join(os.tmpdir(), 'split-')), 'functions');
  fs.writeFileSync(list, [...calls.keys()].filter(name => !kept.has(name)).join('\n'));
  execFileSync('wasm-split', [...FEATURES, program, `--split-funcs=@${list}`, '--export-prefix=%', '-o1', first, '-o2', second]);
  fs.rmSync(path.dirname(list), { recursive: true });
}
