// SPDX-License-Identifier: MIT
// The same bench natively and as WebAssembly, turn about in one run: same_speed.mjs NATIVE_BENCH WASM_BENCH.js
import { execFileSync } from 'node:child_process';

const budget = 1.7;
const [native, wasm] = process.argv.slice(2);
const median = values => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/** {what: ms} of the lines "what: 0.123 ms, …". */
function figures(command, args) {
  const text = execFileSync(command, args, { encoding: 'utf8' });
  return Object.fromEntries([...text.matchAll(/^(.+): ([\d.]+) ms, /gm)].map(([, what, ms]) => [what, Number(ms)]));
}

const ratios = {};
for (let turn = 0; turn < 5; turn++) {
  const ours = figures(native, []), theirs = figures(process.execPath, ['--no-experimental-fetch', wasm]);
  for (const what of Object.keys(ours)) (ratios[what] ??= []).push(theirs[what] / ours[what]);
}
let all_ok = Object.keys(ratios).length > 0;
for (const [what, values] of Object.entries(ratios)) {
  const ratio = median(values), ok = ratio <= budget;
  all_ok &&= ok;
  console.log(`${what}, WASM over native: ${ratio.toFixed(2)}, ${budget}, ${ok ? 'ok' : 'over'}`);
}
process.exit(all_ok ? 0 : 1);
