// SPDX-License-Identifier: MIT
// What the cards cost: their size as they are and of a thousand synthetic kinds, and how long these take to be read and judged.
//   node tests/bench/catalog_bench.mjs [folder of the native build]
import { execFileSync, spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import zlib from 'node:zlib';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
const build = path.resolve(process.argv[2] || path.join(root, 'build/native'));
const species = path.join(root, 'catalog/species');
const temporary = fs.mkdtempSync(path.join(os.tmpdir(), 'cards-'));
let ok = true;

function brotli(file) {
  return zlib.brotliCompressSync(fs.readFileSync(file), { params: { [zlib.constants.BROTLI_PARAM_QUALITY]: 11 } }).length;
}

function print(what, bytes, budget) {
  ok &&= bytes <= budget;
  console.log(`${what}: ${(bytes / 1024).toFixed(1)} KB brotli, ${budget / 1024} KB, ${bytes <= budget ? 'ok' : 'over'}`);
}

/** Packs a folder of cards as the build does; returns the packed file. */
function packed(folder, name) {
  const out = path.join(temporary, name);
  fs.mkdirSync(out);
  execFileSync('python3', [path.join(root, 'catalog/bundle.py'), folder, path.join(root, 'tests/plans/riverbank.json'), out]);
  return path.join(out, 'cards.bin');
}

/** A number off by up to an eighth, with the digits that it had: a kind of its own, not the same text once more. */
function other(value, turn) {
  const digits = (String(value).split('.')[1] || '').length;
  return Number((value * (1 + (turn % 17 - 8) / 64)).toFixed(digits));
}

/** A thousand kinds: the cards in turn, those of the second round with names, ids and lengths of their own. */
function synthetic(folder, count) {
  const files = fs.readdirSync(species, { recursive: true }).filter(name => name.endsWith('.json')).sort();
  const codes = files.map(name => JSON.parse(fs.readFileSync(path.join(species, name))).code);
  let code = Math.max(...codes);
  for (let i = 0; i < count; i++) {
    const card = JSON.parse(fs.readFileSync(path.join(species, files[i % files.length])));
    if (i >= files.length) {
      card.id += `-${i}`;
      card.code = ++code;
      card.aliases = [];
      card.name.scientific += ` ${i}`;
      card.name.synonyms = [];
      card.name.common[0].text = `${['upland', 'striped', 'pale', 'river', 'marsh'][i % 5]} ${card.name.common[0].text}`;
      card.size.adult_tl_cm = other(card.size.adult_tl_cm, i);
      card.needs.least_volume_l = other(card.needs.least_volume_l, i + 5);
      card.note = `${card.note} Number ${i}.`;
    }
    fs.writeFileSync(path.join(folder, `${card.id}.json`), JSON.stringify(card));
  }
}

try {
  // All cards come with the second file of the program, which the first look does not wait for.
  const all = brotli(packed(species, 'all')), kinds = fs.readdirSync(species, { recursive: true }).filter(name => name.endsWith('.json')).length;
  print(`the cards of ${kinds} kinds`, all, 160 * 1024);
  // The synthetic ones repeat most of their words, so that they pack better than kinds of which somebody wrote each.
  print('1,000 kinds as different as these', all / kinds * 1000, 300 * 1024);
  const folder = path.join(temporary, 'thousand');
  fs.mkdirSync(folder);
  synthetic(folder, 1000);
  const thousand = packed(folder, 'packed');
  print('1,000 synthetic kinds', brotli(thousand), 300 * 1024);
  ok &&= spawnSync(path.join(build, 'tests/catalog_bench'), [thousand], { stdio: 'inherit' }).status === 0;
} finally {
  fs.rmSync(temporary, { recursive: true });
}
process.exit(ok ? 0 : 1);
