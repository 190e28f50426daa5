// SPDX-License-Identifier: MIT
// The native helper and the WASM module answer alike for every plan of a folder:
//   node same_answers.cjs PATH/TO/shoal PATH/TO/core.js FOLDER
// Findings by id, severity, animals and order exactly; numbers to six significant digits, since the last rounding of log10 and pow may
// differ; texts and links letter by letter. Prints one line a plan; exit 1 when anything differs.
'use strict';
const { execFileSync } = require('child_process');
const fs = require('fs');
const path = require('path');

const [shoal, coreJs, folder] = process.argv.slice(2);
if (!folder) {
  console.error('Use: node same_answers.cjs SHOAL CORE.JS FOLDER');
  process.exit(2);
}

function native(command, file) {
  return execFileSync(shoal, [command, file], { encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 }).replace(/\n$/, '');
}

function caller(module) {
  return (name, text) => {
    const size = module.lengthBytesUTF8(text) + 1;
    const pointer = module._malloc(size);
    module.stringToUTF8(text, pointer, size);
    const answer = JSON.parse(module.UTF8ToString(module['_' + name](pointer)));
    module._free(pointer);
    if (answer.error) throw new Error(name + ': ' + answer.error.sentence);
    return answer.value;
  };
}

// Where two values differ, by JSON Pointer.
function differences(a, b, at, out) {
  if (typeof a === 'number' && typeof b === 'number') {
    if (a.toPrecision(6) !== b.toPrecision(6) && Math.abs(a - b) > 1e-9) out.push(`${at}: ${a} natively, ${b} in WASM`);
  } else if (a !== null && b !== null && typeof a === 'object' && typeof b === 'object' && Array.isArray(a) === Array.isArray(b)) {
    const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
    for (const key of keys) {
      if (!(key in a) || !(key in b)) out.push(`${at}/${key}: only ${key in a ? 'natively' : 'in WASM'}`);
      else differences(a[key], b[key], `${at}/${key}`, out);
    }
  } else if (a !== b) {
    out.push(`${at}: ${JSON.stringify(a)} natively, ${JSON.stringify(b)} in WASM`);
  }
  return out;
}

function compare(call, file) {
  const text = fs.readFileSync(file, 'utf8');
  const out = differences(JSON.parse(native('assess', file)), call('assess', text), '', []);
  for (const [command, name] of [['suggest', 'suggest'], ['least-tank', 'least_tank'], ['mend', 'mend'], ['recipe', 'recipe']])
    differences(JSON.parse(native(command, file)), call(name, text), `${command}:`, out);
  const filled = JSON.parse(native('fill', file));
  differences(filled, { ...call('fill', text), seconds: filled.seconds }, 'fill:', out);
  const link = native('link', file);
  if (link !== call('link_of', text)) out.push(`link: ${link} natively, ${call('link_of', text)} in WASM`);
  differences(JSON.parse(native('open', link)), call('open_link', link), '/open', out);
  return out;
}

require(path.resolve(coreJs))().then((module) => {
  const call = caller(module);
  const files = fs.readdirSync(folder).filter((name) => name.endsWith('.json')).sort();
  let wrong = files.length === 0 ? 1 : 0;
  if (wrong) console.error('No plan in ' + folder);
  for (const name of files) {
    const out = compare(call, path.join(folder, name));
    console.log(`${out.length === 0 ? 'same' : 'DIFFERENT'}  ${name}`);
    for (const line of out) console.log('    ' + line);
    if (out.length > 0) ++wrong;
  }
  process.exit(wrong === 0 ? 0 : 1);
}, (error) => {
  console.error('core.js does not start: ' + error);
  process.exit(1);
});
