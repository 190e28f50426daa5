// SPDX-License-Identifier: MIT
// Moves the constants that only the second file's functions use into that file: move_constants(PROGRAM.wasm, FIRST.wasm, SECOND.wasm).
// Both files stand in one memory, and each constant keeps its address in it; until the second file is there, nothing asks for them.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';

const CODE = 10, DATA = 11, DATA_COUNT = 12;  // numbers of sections
const REACH = 64;  // bytes: an element before a table's first may be what the compiler names to count from
const GAP = 64;  // bytes of zeros that compress better than the head of one more piece

const lines_of = file => execFileSync('wasm-dis', [file], { encoding: 'utf8', maxBuffer: 1 << 30 }).split('\n');

/** The program's constants, [{at, end, text}], by address; one may come in several pieces, with zeros between them. */
function constants_of(program) {
  const constants = [];
  let last_name;
  for (const line of lines_of(program)) {
    const found = /^ \(data \$(\.rodata\.\S+) \(i32\.const (\d+)\) "(.*)"\)$/.exec(line);
    if (!found) continue;
    const [, piece, address, bytes] = found, at = +address, end = at + bytes.replace(/\\([0-9a-f]{2}|.)/g, '.').length;
    const text = piece.startsWith('.rodata..L.str'), name = piece.replace(/(\.\d+)+$/, '');
    if (!text && name === last_name) constants.at(-1).end = end;
    else constants.push({ at, end, text });
    last_name = name;
  }
  if (!constants.length) throw new Error(`${program}: its constants have no names`);
  return constants.sort((a, b) => a.at - b.at);
}

/** Every number in a file's functions and globals that could be an address. */
function numbers_in(file) {
  const found = new Set();
  for (const line of lines_of(file))
    if (!line.startsWith(' (data')) for (const [, number] of line.matchAll(/(?:i32\.const |offset=)(\d+)/g)) found.add(+number);
  return found;
}

/** A number as WebAssembly writes it: the lowest 7 bits first, the highest bit of a byte says that more follow. */
export const varint = n => n < 128 ? [n] : [n & 127 | 128, ...varint(n >>> 7)];
const signed_varint = n => n < 64 ? [n] : [n & 127 | 128, ...signed_varint(n >>> 7)];

function read_varint(bytes, at) {
  let value = 0, shift = 0, byte;
  do {
    byte = bytes[at++];
    value |= (byte & 127) << shift;
    shift += 7;
  } while (byte & 128);
  return [value >>> 0, at];
}

function sections_of(bytes) {
  const sections = [];
  for (let at = 8; at < bytes.length;) {
    const [length, begin] = read_varint(bytes, at + 1);
    sections.push({ id: bytes[at], body: bytes.subarray(begin, begin + length) });
    at = begin + length;
  }
  return sections;
}

/** A section of a WebAssembly file: its number, its length, its body. */
export const section = (id, body) => Buffer.concat([Buffer.from([id, ...varint(body.length)]), body]);

function write_module(file, head, sections) {
  fs.writeFileSync(file, Buffer.concat([head, ...sections.map(({ id, body }) => section(id, body))]));
}

/** The pieces of a data section, [{at, bytes}]; each has a constant address. */
function read_data(body) {
  let [count, at] = read_varint(body, 0);
  const pieces = [];
  for (; count > 0; --count) {
    if (body[at] !== 0 || body[at + 1] !== 0x41) throw new Error('a piece of data without a constant address');
    const [address, address_end] = read_varint(body, at + 2);
    const [length, begin] = read_varint(body, address_end + 1);
    pieces.push({ at: address, bytes: body.subarray(begin, begin + length) });
    at = begin + length;
  }
  return pieces;
}

const write_data = pieces => Buffer.concat([Buffer.from(varint(pieces.length)), ...pieces.flatMap(({ at, bytes }) =>
  [Buffer.from([0, 0x41, ...signed_varint(at), 0x0b, ...varint(bytes.length)]), bytes])]);

/** The pieces, those at most `gap` bytes apart joined by zeros. */
function joined(pieces, gap) {
  const runs = [];
  for (const { at, bytes } of pieces) {
    const last = runs.at(-1);
    if (last && at - last.end <= gap) last.parts.push(Buffer.alloc(at - last.end), bytes);
    else runs.push({ at, parts: [bytes] });
    runs.at(-1).end = at + bytes.length;
  }
  return runs.map(({ at, parts }) => ({ at, bytes: Buffer.concat(parts) }));
}

/** Which constants stay: what the first file's functions and its other data may point to, and what those point to in turn. */
function staying(constants, memory, owner, numbers) {
  const stays = new Uint8Array(constants.length), to_read = [];
  const keep = i => {
    if (i < 0 || i >= constants.length || stays[i]) return;
    stays[i] = 1;
    if (!constants[i].text) to_read.push(i);
  };
  // The zeros between two may be of either; a table may be counted from a little before it.
  const starts = constants.map(({ at }) => at);
  const use = address => {
    let low = 0, high = starts.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (starts[middle] <= address) low = middle + 1; else high = middle;
    }
    keep(low - 1);
    if (low > 0 && address >= constants[low - 1].end) keep(low);
    for (let i = low; i < constants.length && starts[i] - address <= REACH; ++i) if (!constants[i].text) keep(i);
  };
  const read = (from, end) => { for (let at = (from + 3) & ~3; at + 4 <= end; at += 4) use(memory.readUInt32LE(at)); };
  for (const number of numbers) if (number < memory.length) use(number);
  for (let at = 0; at + 4 <= memory.length; at += 4) if (owner[at] < 0) read(at, at + 4);
  while (to_read.length) {
    const { at, end } = constants[to_read.pop()];
    read(at, end);
  }
  return stays;
}

export function move_constants(program, first, second) {
  const constants = constants_of(program), bytes = fs.readFileSync(first), sections = sections_of(bytes);
  const data = sections.find(({ id }) => id === DATA), pieces = read_data(data.body);
  const size = Math.max(...pieces.map(({ at, bytes }) => at + bytes.length));
  const memory = Buffer.alloc(size + 4), set = new Uint8Array(size + 4), owner = new Int32Array(size + 4).fill(-1);
  for (const { at, bytes } of pieces) {
    bytes.copy(memory, at);
    set.fill(1, at, at + bytes.length);
  }
  constants.forEach(({ at, end }, i) => owner.fill(i, at, end));

  const stays = staying(constants, memory, owner, numbers_in(first));
  const goes = at => owner[at] >= 0 && !stays[owner[at]];
  const kept = [], moved = [];
  for (let at = 0, end; at < size; at = end) {
    for (end = at + 1; end < size && set[end] === set[at] && goes(end) === goes(at);) ++end;
    if (set[at]) (goes(at) ? moved : kept).push({ at, bytes: memory.subarray(at, end) });
  }
  const left = joined(kept, GAP);
  data.body = write_data(left);
  for (const section of sections) if (section.id === DATA_COUNT) section.body = Buffer.from(varint(left.length));
  write_module(first, bytes.subarray(0, 8), sections);

  const other = fs.readFileSync(second), others = sections_of(other);
  if (others.some(({ id }) => id === DATA || id === DATA_COUNT)) throw new Error(`${second}: has data already`);
  // One byte: the zero between two texts. More could be a byte of the first file's.
  others.splice(others.findIndex(({ id }) => id === CODE) + 1, 0, { id: DATA, body: write_data(joined(moved, 1)) });
  write_module(second, other.subarray(0, 8), others);
}
