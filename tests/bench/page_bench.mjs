// SPDX-License-Identifier: MIT
// What the page costs its visitor, each figure beside its budget: bytes, start, rest, answer to a move, a drag.
//   SITE   folder of the built page      SHOAL  the helper shoal
// Arguments: the parts to measure (bytes, start, rest_and_answer, drag, swim), none for all.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import zlib from 'node:zlib';
import { Planner, launch, serve, site, sleep } from '../browser/harness.mjs';

const tests = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..');
let all_ok = true;

function print(what, figure, budget, unit) {
  const ok = figure <= budget;
  all_ok &&= ok;
  console.log(`${what}: ${figure} ${unit}, ${budget} ${unit}, ${ok ? 'ok' : 'over'}`);
}

const median = values => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
const rounded = value => Math.round(value * 10) / 10;

/** Notes when the first frame is there, and says so on the console, and what each frame costs, before the page's own scripts run. */
function watch() {
  const ask = window.requestAnimationFrame.bind(window);
  window.frame_costs = [];
  window.answers = [];
  let moved_at = 0;
  window.requestAnimationFrame = work => ask(now => {
    const start = performance.now();
    work(now);
    window.frame_costs.push(performance.now() - start);
    if (moved_at) window.answers.push(performance.now() - moved_at);
    moved_at = 0;
  });
  new MutationObserver(() => {
    if (document.body?.dataset.state !== 'running' || window.first_frame_ms !== undefined) return;
    window.first_frame_ms = performance.now();
    console.debug('first frame');
  }).observe(document, { attributes: true, subtree: true, attributeFilter: ['data-state'] });
  window.addEventListener('pointermove', event => { moved_at = event.timeStamp; }, true);
}

function floor_folder() {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'floor-'));
  fs.writeFileSync(path.join(folder, 'index.html'), '<!doctype html><meta charset="utf-8"><title>floor</title><canvas></canvas><script src="floor.js"></script>');
  fs.writeFileSync(path.join(folder, 'floor.js'), `
    const gl = document.querySelector('canvas').getContext('webgl2');
    gl.clearColor(0.2, 0.4, 0.6, 1);
    gl.clear(gl.COLOR_BUFFER_BIT);
    window.first_frame_ms = performance.now();
    console.debug('first frame');`);
  return folder;
}

async function bytes(browser, server) {
  const planner = await Planner.open(browser, server.url);
  const names = new Set(planner.requests.map(url => new URL(url).pathname.slice(1) || 'index.html'));
  await planner.close();
  let sum = 0;
  for (const name of names) {
    const text = fs.readFileSync(path.join(site, name));
    sum += zlib.brotliCompressSync(text, { params: { [zlib.constants.BROTLI_PARAM_QUALITY]: 11, [zlib.constants.BROTLI_PARAM_LGWIN]: 24 } }).length;
  }
  print(`a first visit, ${names.size} files, brotli`, rounded(sum / 1000), 450, 'KB');
}

async function start(browser, server) {
  const folder = floor_folder(), floor_server = await serve(folder);
  const first = async url => {
    const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
    const page = await context.newPage();
    await page.addInitScript(watch);
    await sleep(500);  // what the browser still does for the page before
    // The page is asked nothing before its frame is there: the driver's own scripts would be part of the start.
    const drawn = page.waitForEvent('console', message => message.text() === 'first frame');
    await page.goto(url, { waitUntil: 'commit' });
    await drawn;
    const ms = await page.evaluate(() => window.first_frame_ms);
    await context.close();
    return ms;
  };
  const ours = [], floor = [];
  for (let run = 0; run < 8; run++) {
    const a = await first(server.url), b = await first(floor_server.url);
    if (run > 0) {  // the first load warms the browser
      ours.push(a);
      floor.push(b);
    }
  }
  await floor_server.close();
  fs.rmSync(folder, { recursive: true });
  print(`first frame after that of a bare WebGL 2 page (${rounded(median(ours))} against ${rounded(median(floor))})`, rounded(median(ours) - median(floor)), 300, 'ms');
}

async function rest_and_answer(browser, server) {
  const planner = await Planner.open(browser, server.url, { init: watch });
  await planner.idle(1000);
  const before = await planner.frames();
  await sleep(10000);
  print('frames in 10 s of no input', await planner.frames() - before, 0, 'frames');
  for (let i = 0; i < 21; i++) {
    await planner.page.mouse.move(500 + 20 * (i % 7), 300 + 10 * i);
    await sleep(450);
  }
  const answers = await planner.page.evaluate(() => window.answers);
  await planner.close();
  print(`a move of the pointer to the frame drawn for it, median of ${answers.length}`, rounded(median(answers)), 10, 'ms');
}

// What each of `moves` costs: the main thread's processor time for a frame, everything on it counted, the browser's own part and the
// driver's questions too; and the time by the clock inside our frame, in which a machine without a graphics card also rasterises
// on the same processors.
async function frames_of(planner, clock, moves) {
  const count = () => planner.page.evaluate(() => window.frame_costs.length);
  await planner.idle();
  await planner.page.evaluate(() => { window.frame_costs.length = 0; });
  const cpu = [];
  let frames = 0, spent = await clock();
  for (const [x, y] of moves) {
    await planner.page.mouse.move(x, y);
    await sleep(16);
    const [drawn, now] = await Promise.all([count(), clock()]);
    if (drawn > frames) cpu.push((now - spent) / (drawn - frames));
    frames = drawn;
    spent = now;
  }
  return { cpu, wall: await planner.page.evaluate(() => window.frame_costs) };
}

async function drag(browser, server) {
  const link = execFileSync(process.env.SHOAL, ['link', path.join(tests, 'plans/bench-8-14.json')], { encoding: 'utf8' }).trim();
  const planner = await Planner.open(browser, server.url + link.slice(link.indexOf('#')), { width: 1440, height: 900, init: watch });
  const protocol = await planner.page.context().newCDPSession(planner.page);
  await protocol.send('Performance.enable', { timeDomain: 'threadTicks' });
  const clock = async () => 1000 * (await protocol.send('Performance.getMetrics')).metrics.find(one => one.name === 'TaskDuration').value;
  const steps = Array.from({ length: 60 }, (_, i) => i);
  const say = (what, { cpu, wall }, budget = 8) => {
    print(`${what}, processor time, median of ${cpu.length}`, rounded(median(cpu)), budget, 'ms');
    console.log(`  by the clock, which waits where the same processors rasterise: ${rounded(median(wall))} ms`);
  };

  const row = await planner.first('shelf.row/');
  const { x, y } = await planner.point(row), tank = await planner.rect('tank.front');
  await planner.page.mouse.move(x, y);
  await planner.page.mouse.down();
  await planner.page.mouse.move(tank.x + 40, tank.y + tank.height / 2, { steps: 8 });
  const species = await frames_of(planner, clock, steps.map(i => [tank.x + 40 + i * (tank.width - 80) / 60, tank.y + tank.height * (0.4 + 0.1 * Math.sin(i / 5))]));
  await planner.page.mouse.up();

  const stone = async way => {
    const piece = await planner.rect('above.piece/2');
    await planner.page.mouse.move(piece.x + piece.width / 2, piece.y + piece.height / 2);
    await planner.page.mouse.down();
    await planner.page.mouse.move(piece.x + piece.width / 2 + 10 * way, piece.y, { steps: 4 });
    const costs = await frames_of(planner, clock, steps.map(i => [piece.x + way * (40 + 3 * i), piece.y - 10 + 8 * Math.sin(i / 5)]));
    await planner.page.mouse.up();
    return costs;
  };
  const alone = await stone(1);
  await planner.press('c');
  const crowded = await stone(-1);
  await planner.close();
  say('a frame while a stone is dragged through the bench plan', alone);
  say('the same with crowding laid over it, which follows by a tenth of a second', crowded, 16.7);
  print('the dearest of them, which brings crowding up to date', rounded(Math.max(...crowded.cpu)), 100, 'ms');
  say('a frame while a species is dragged over the bench plan', species);
}

async function swim(browser, server) {
  const file = path.join(os.tmpdir(), `swim-${process.pid}.json`);
  const plan = JSON.parse(fs.readFileSync(path.join(tests, 'plans/bench-8-14.json'), 'utf8'));
  for (const group of plan.stock) group.count *= 8;
  fs.writeFileSync(file, JSON.stringify(plan));
  const link = execFileSync(process.env.SHOAL, ['link', file], { encoding: 'utf8' }).trim();
  fs.unlinkSync(file);
  const planner = await Planner.open(browser, server.url + link.slice(link.indexOf('#')), { width: 1440, height: 900, init: watch, wait: false });
  await planner.in_state('running');
  await sleep(12000);  // so many fish take long to be drawn without a graphics card
  const { x, y, width, height } = await planner.rect('tool.swim');
  await planner.page.mouse.click(x + width / 2, y + height / 2);
  await sleep(1500);
  await planner.page.evaluate(() => { window.frame_costs.length = 0; });
  await sleep(4000);
  const costs = await planner.page.evaluate(() => window.frame_costs);
  await planner.close();
  print(`a frame while 200 fish swim, median of ${costs.length}`, rounded(median(costs)), 16.7, 'ms');
}

const parts = { bytes, start, rest_and_answer, drag, swim }, wanted = process.argv.slice(2);
const browser = await launch(), server = await serve();
for (const name of wanted.length ? wanted : Object.keys(parts)) await parts[name](browser, server);
await browser.close();
await server.close();
process.exit(all_ok ? 0 : 1);
