// SPDX-License-Identifier: MIT
// How long the best stock of each stored problem takes to be proven, reading included, natively and in WASM, as a ratio to the time
// of the fastest general-purpose solver (tests/problems/README.md): fill_ratio.mjs SHOAL CORE.js
// Where that needs 0.05 s or more the ratio has to be below 1 in WASM, and 0.2 in the median of all; elsewhere 50 ms will do. What is
// proven within a second was also found within one.
import { execFileSync } from 'node:child_process';
import { readFileSync, existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gunzipSync } from 'node:zlib';

const [shoal, core] = process.argv.slice(2);
const folder = join(dirname(fileURLToPath(import.meta.url)), '../problems');
const median = values => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
const runs = 5, long_enough_s = 0.05, budget_ratio = 1, budget_median = 0.2, budget_short_s = 0.05, budget_found_s = 1;

function problem_text(name) {
  const plain = join(folder, name + '.json');
  return (existsSync(plain) ? readFileSync(plain) : gunzipSync(readFileSync(plain + '.gz'))).toString('utf8');
}

const module = await createRequire(import.meta.url)(resolve(core))();

function in_wasm(text) {
  const size = module.lengthBytesUTF8(text) + 1, pointer = module._malloc(size);
  module.stringToUTF8(text, pointer, size);
  const answer = JSON.parse(module.UTF8ToString(module._fill_instance(pointer)));
  module._free(pointer);
  if (answer.error) throw new Error(answer.error.sentence);
  return answer.value;
}

const natively = text => JSON.parse(execFileSync(shoal, ['fill', '--instance', '-'], { input: text, encoding: 'utf8' }));

const problems = readFileSync(join(folder, 'optima.csv'), 'utf8').trim().split('\n').slice(1).map(line => line.split(','));
const ratios = [];
let all_ok = problems.length > 0;
const print = (what, figure, budget, ok) => {
  all_ok &&= ok;
  console.log(`${what}: ${figure}, ${budget}, ${ok ? 'ok' : 'over'}`);
};
for (const [name, optimum, , solver] of problems) {
  const text = problem_text(name), solver_s = Number(solver), native_s = [], wasm_s = [];
  for (let run = 0; run < runs; run++) {
    const native = natively(text), wasm = in_wasm(text);
    if (JSON.stringify(native.chosen) !== JSON.stringify(wasm.chosen)) print(name + ', another stock in WASM', 1, 0, false);
    for (const [answer, seconds] of [[native, native_s], [wasm, wasm_s]]) {
      if (answer.optimum !== Number(optimum) || !answer.proven) print(name, answer.optimum, optimum, false);
      seconds.push(answer.seconds);
    }
  }
  const seconds = median(wasm_s), ratio = seconds / solver_s;
  ratios.push(ratio);
  const figures = `${seconds.toFixed(4)} s in WASM, ${median(native_s).toFixed(4)} s natively, ${ratio.toFixed(3)} of the solver's`;
  if (solver_s >= long_enough_s) print(name, figures, budget_ratio, ratio < budget_ratio && seconds <= budget_found_s);
  else print(name, figures, `${budget_short_s} s`, seconds < budget_short_s);
}
print('the median of all', median(ratios).toFixed(3), budget_median, median(ratios) <= budget_median);
process.exit(all_ok ? 0 : 1);
