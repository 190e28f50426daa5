// SPDX-License-Identifier: MIT
// Checks what the planner needs, loads it with real progress, and starts it. Says in words what is missing.
import { open_drafts } from './drafts.js';
import { apply_theme, fail, listen, page } from './page.js';

/** The four faces in the order of faces.bin (web/site.mjs), each with how a page calls it. */
const FACES = [
  ['inter-regular', { weight: '400' }], ['inter-medium', { weight: '500' }], ['inter-semibold', { weight: '600' }],
  ['inter-italic', { weight: '400', style: 'italic' }],
];

// The smallest module with a 128-bit value: type () -> v128, one function returning v128.const 0.
const SIMD = new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0, 1, 5, 1, 96, 0, 1, 123, 3, 2, 1, 0, 10, 22, 1, 20, 0, 253, 12, ...Array(16).fill(0), 11]);

class Missing extends Error {
  constructor(file) {
    super(`A part of the planner could not be loaded: ${file}.`);
  }
}

async function get(file) {
  const answer = await fetch(file).catch(() => null);
  if (!answer || !answer.ok) throw new Missing(file);
  return answer;
}

function show_progress(bytes, of) {
  const mb = n => (n / 1e6).toFixed(1), share = Math.min(1, bytes / of);
  const amount = document.getElementById('loading-amount');
  amount.textContent = `${mb(Math.min(bytes, of))} of ${mb(of)} MB`;
  amount.setAttribute('aria-valuenow', Math.round(share * 100));
  document.getElementById('tank-water').style.height = `${share * 90}%`;
}

/** The program's file as an answer that counts while it streams, so that compiling and showing progress go along with loading. */
async function program_answer() {
  const answer = await get('planner.wasm');
  const of = Number(document.body.dataset.programBytes);
  let bytes = 0;
  const counting = new TransformStream({
    transform(chunk, out) {
      bytes += chunk.byteLength;
      if (of > 0) show_progress(bytes, of);
      out.enqueue(chunk);
    },
  });
  return new Response(answer.body.pipeThrough(counting), { headers: { 'content-type': 'application/wasm' } });
}

let rest = null;

/** The second file of the program, compiled, and the cards of all species, which are a section of it. Once it is there it is not asked for again. */
function get_rest() {
  rest ??= get('rest.wasm').then(WebAssembly.compileStreaming).then(module => {
    page.assets.cards = new Uint8Array(WebAssembly.Module.customSections(module, 'cards')[0]);
    return module;
  }).catch(error => {
    rest = null;
    throw error;
  });
  return rest;
}

async function load_faces() {
  const all = await (await get('faces.bin')).arrayBuffer(), lengths = new DataView(all);
  let at = 4 * FACES.length;
  FACES.forEach(([name], i) => {
    page.assets[name] = new Uint8Array(all, at, lengths.getUint32(4 * i, true));
    at += page.assets[name].length;
  });
}

/** For the page's own letters, which may come later than the drawing's. */
function add_faces() {
  for (const [name, how] of FACES) {
    const face = new FontFace('Inter', page.assets[name], how);
    document.fonts.add(face);
    face.load().catch(() => {});
  }
}

function stopped(why) {
  fail('The planner has stopped.', `Your plan is kept on this device. Try again, or take it along. (${why})`);
}

function given_up(error) {
  if (error instanceof Missing) fail(error.message, 'Check the connection, then try again.');
  else fail('The planner could not be started.', `Try again, or open the link in another browser. (${error.message})`);
}

function find_drafts() {
  return open_drafts(location.hash.startsWith('#p=') ? location.hash : '').then(found => {
    page.drafts = found;
    listen();
  });
}

/** Asks for all parts at once and lets the program, whose script runs next, wait for them. */
function start() {
  apply_theme();
  const able = typeof WebAssembly === 'object' && WebAssembly.validate(SIMD);
  const program = able ? program_answer().then(answer => WebAssembly.compileStreaming(answer)) : null;
  // A link is read by the second file, which is otherwise fetched when it is wanted.
  if (able && location.hash.startsWith('#p=')) get_rest().catch(() => {});
  // A plan that was kept may hold any kind, and a first look at it should name them all; without them it comes a little later.
  const drafts = find_drafts().then(() => able && page.drafts.draft && get_rest().catch(() => {}));
  const parts = able ? Promise.all([program, load_faces(), drafts]) : drafts;
  window.Module = {
    page,
    instantiateWasm(imports, receive) {
      if (able)
        parts.then(async ([module]) => {
          // What the second file holds is called through these until it is here; nothing does so before.
          imports.placeholder = new Proxy({}, { get: (_, name) => () => { throw new Error(`Part ${String(name)} of the planner is not here yet.`); } });
          const instance = await WebAssembly.instantiate(module, imports);
          page.add_rest = async () => {
            await WebAssembly.instantiate(await get_rest(), { primary: instance.exports });
            document.body.dataset.rest = 'here';
          };
          if (page.assets.cards) await page.add_rest().catch(() => {});  // it has come already, for a plan that was kept
          receive(instance, module);  // the first frame is drawn in here
          setTimeout(add_faces, 100);
        }).catch(given_up);
      return {};
    },
    onAbort: stopped,
  };
  window.addEventListener('error', ({ error }) => error instanceof WebAssembly.RuntimeError && stopped(error.message));
  document.addEventListener('DOMContentLoaded', () => window.UTF8ToString || given_up(new Missing('planner.js')));
  parts.then(() => able || fail('This browser is too old for the planner: it lacks WebAssembly SIMD.',
    'Bring the browser up to date (one from 2023 or later will do), or open the link in another one.')).catch(given_up);
}

start();
