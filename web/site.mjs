// SPDX-License-Identifier: MIT
// Puts the page together: site.mjs PROGRAM_FOLDER SITE_FOLDER CARDS.bin REGULAR.otf MEDIUM.otf SEMIBOLD.otf ITALIC.otf
// What belongs together becomes one file, since each answer of a server takes its time: the page's scripts, and the four faces.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { FEATURES, split } from './split.mjs';
import { move_constants, section, varint } from './split_data.mjs';

const from = path.dirname(fileURLToPath(import.meta.url));
const [program, site, cards, ...faces] = process.argv.slice(2);
const run = (command, ...args) => execFileSync(command, args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit'] });

/** A custom section of a WebAssembly file: number 0, its body begins with its name. */
const custom_section = (name, bytes) => section(0, Buffer.concat([Buffer.from([...varint(name.length), ...Buffer.from(name)]), bytes]));

const program_script = path.join(site, 'planner.js'), program_code = path.join(site, 'planner.wasm');
// The page reaches into the program by these two names.
run('terser', path.join(program, 'planner.js'), '--output', program_script,
  '--mangle', "toplevel,reserved=['Module','UTF8ToString']", '--compress', "toplevel,top_retain=['Module','UTF8ToString']");
const rest_code = path.join(site, 'rest.wasm');
split(path.join(program, 'planner.wasm'), path.join(from, '../wasm/rest.txt'), program_code, rest_code);
// A second round of the optimiser finds 3 KB that the linker's one leaves.
for (const file of [program_code, rest_code])
  run('wasm-opt', '-Oz', '--converge', '-aimfs', '6', '-ocimfs', '300', '--strip-debug', ...FEATURES, file, '-o', file);
move_constants(path.join(program, 'planner.wasm'), program_code, rest_code);
// The cards of all species go along as a section of their own, so that they are of the same build as the program.
fs.appendFileSync(rest_code, custom_section('cards', fs.readFileSync(cards)));

run('esbuild', path.join(from, 'boot.js'), '--bundle', '--minify', '--format=iife', '--target=es2020', '--log-level=warning',
  `--outfile=${path.join(site, 'boot.js')}`);
run('esbuild', path.join(from, 'style.css'), '--minify', '--log-level=warning', `--outfile=${path.join(site, 'style.css')}`);
for (const file of ['icon.svg', 'licences.html']) fs.copyFileSync(path.join(from, file), path.join(site, file));
// Four lengths (32 bits, the lowest byte first), then the faces.
const fonts = faces.map(face => fs.readFileSync(face)), lengths = Buffer.alloc(4 * fonts.length);
fonts.forEach((font, i) => lengths.writeUInt32LE(font.length, 4 * i));
fs.writeFileSync(path.join(site, 'faces.bin'), Buffer.concat([lengths, ...fonts]));

const bytes = String(fs.statSync(program_code).size);  // so that loading can show progress
fs.writeFileSync(path.join(site, 'index.html'), fs.readFileSync(path.join(from, 'index.html'), 'utf8').replace('@PROGRAM_BYTES@', bytes));
