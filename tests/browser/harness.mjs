// SPDX-License-Identifier: MIT
// Drives the built page by real mouse and keyboard events. The program tells where its things stand (`state_json`), the mouse goes there.
//   SITE      folder of the built page (build/site)
//   CHROMIUM  the browser to use (what `chromium` names)
//   SHOTS     folder for screenshots (build/shots)
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import http from 'node:http';
import path from 'node:path';
import { after, before } from 'node:test';
import { fileURLToPath } from 'node:url';
import pixelmatch from 'pixelmatch';
import { chromium } from 'playwright-core';
import { PNG } from 'pngjs';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
export const site = path.resolve(process.env.SITE || path.join(root, 'build/site'));
export const shots = path.resolve(process.env.SHOTS || path.join(root, 'build/shots'));

const types = {
  '.css': 'text/css', '.html': 'text/html', '.ico': 'image/x-icon', '.js': 'text/javascript', '.json': 'application/json',
  '.mjs': 'text/javascript', '.otf': 'font/otf', '.png': 'image/png', '.svg': 'image/svg+xml', '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

/** Serves a folder on a free port of this machine. `missing` names files to answer with 404. */
export async function serve(folder = site, { missing = [] } = {}) {
  if (!fs.existsSync(path.join(folder, 'index.html'))) throw new Error(`There is no built page in ${folder}; build it first.`);
  const server = http.createServer((request, answer) => {
    const name = decodeURIComponent(new URL(request.url, 'http://localhost').pathname).slice(1) || 'index.html';
    const file = path.join(folder, name);
    if (!file.startsWith(folder + path.sep) || missing.includes(name) || !fs.existsSync(file) || fs.statSync(file).isDirectory()) {
      answer.writeHead(404).end();
      return;
    }
    answer.writeHead(200, { 'content-type': types[path.extname(file)] || 'application/octet-stream', 'cache-control': 'no-store' });
    fs.createReadStream(file).pipe(answer);
  });
  await new Promise(resolve => server.listen(0, '127.0.0.1', resolve));
  return {
    url: `http://127.0.0.1:${server.address().port}/`,
    close: () => new Promise(resolve => {
      server.closeAllConnections();
      server.close(resolve);
    }),
  };
}

/** Starts the browser; `flags` are added to those that make WebGL2 work without a graphics card. */
export function launch(flags = []) {
  const executablePath = process.env.CHROMIUM || execFileSync('sh', ['-c', 'command -v chromium || command -v google-chrome'], { encoding: 'utf8' }).trim();
  return chromium.launch({
    executablePath,
    args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--disable-background-networking', ...flags],
  });
}

export const sleep = ms => new Promise(resolve => setTimeout(resolve, ms));

/** The page with the planner in it, and a hand on mouse and keyboard. */
export class Planner {
  /** Opens `url` in a fresh profile (or in `context`). Options: width, height, ratio, init (a function to run before the page's scripts), wait. */
  static async open(browser, url, { width = 1280, height = 800, ratio = 1, context, init, wait = true, ...more } = {}) {
    const own = context || await browser.newContext({
      viewport: { width, height }, deviceScaleFactor: ratio, permissions: ['clipboard-read', 'clipboard-write'], ...more,
    });
    const planner = new Planner();
    planner.context = own;
    planner.owns_context = !context;
    planner.page = await own.newPage();
    planner.complaints = [];  // errors, warnings and refusals of the policy: a sound page has none
    planner.requests = [];
    planner.page.on('pageerror', error => planner.complaints.push(`error: ${error.message}`));
    planner.page.on('console', message => ['error', 'warning'].includes(message.type()) && planner.complaints.push(`${message.type()}: ${message.text()}`));
    planner.page.on('request', request => request.url().startsWith('http') && planner.requests.push(request.url()));
    if (init) await planner.page.addInitScript(init);
    await planner.page.goto(url);
    if (wait) await planner.running();
    return planner;
  }

  close() {
    return this.owns_context ? this.context.close() : this.page.close();
  }

  /** Waits for the first frame and for rest after it. */
  async running() {
    await this.in_state('running');
    await this.idle();
  }

  in_state(state, timeout = 20000) {
    return this.page.waitForFunction(wanted => document.body && document.body.dataset.state === wanted, state, { timeout });
  }

  frames() {
    return this.page.evaluate(() => window.Module.page.frames || 0);
  }

  /** Waits until nothing has been drawn for `rest` ms and no part of the program is on its way. */
  async idle(rest = 120, timeout = 10000) {
    const end = Date.now() + timeout;
    for (let before = -1; ;) {
      // Two turns of the screen first: on a busy machine a frame that is owed may be late.
      const now = await this.page.evaluate(() => new Promise(resolve => {
        const frames = () => resolve(document.body.dataset.rest === 'loading' ? -2 : (window.Module.page && window.Module.page.frames) || 0);
        requestAnimationFrame(() => requestAnimationFrame(frames));
        setTimeout(frames, 1000);  // a page in the background gets no turns
      }));
      if (now === before && now >= 0) return;
      if (Date.now() > end) throw new Error('The planner goes on drawing.');
      before = now;
      await sleep(rest);
    }
  }

  /** What the program knows: {plan, assessment, rects: {id: [x, y, width, height]}, …}. */
  state() {
    return this.page.evaluate(() => JSON.parse(window.UTF8ToString(window.Module._state_json())));
  }

  async rect(id) {
    const { rects } = await this.state();
    if (!rects[id]) throw new Error(`Nothing named "${id}" was drawn; there are ${Object.keys(rects).join(', ')}`);
    const [x, y, width, height] = rects[id];
    return { x, y, width, height };
  }

  /** First id that begins so. */
  async first(prefix) {
    const found = Object.keys((await this.state()).rects).find(id => id.startsWith(prefix));
    if (!found) throw new Error(`Nothing whose name begins with "${prefix}" was drawn.`);
    return found;
  }

  /** A point of the drawn thing: its middle, or shares of its width and height. */
  async point(id, across = 0.5, down = 0.5) {
    const { x, y, width, height } = await this.rect(id);
    return { x: x + width * across, y: y + height * down };
  }

  async hover(id) {
    const { x, y } = await this.point(id);
    await this.page.mouse.move(x, y);
    await this.idle();
  }

  /** Turns the wheel over a point until a thing that is scrolled out of sight can be pressed. */
  async bring(id, over) {
    for (let turn = 0; turn < 40; turn++) {
      const rect = (await this.state()).rects[id];
      if (rect && rect[3] >= 20) return;
      await this.page.mouse.move(over.x, over.y);
      await this.page.mouse.wheel(0, 120);
      await this.idle(60);
    }
    throw new Error(`"${id}" cannot be scrolled to.`);
  }

  async click(id, options) {
    const { x, y } = await this.point(id);
    await this.page.mouse.click(x, y, options);
    await this.idle();
  }

  /** Drags from a named thing (or a point) to another in steps, as a hand does. `before_drop` runs while it is still held. */
  async drag(from, to, { steps = 8, before_drop } = {}) {
    const start = typeof from === 'string' ? await this.point(from) : from;
    await this.page.mouse.move(start.x, start.y);
    await this.page.mouse.down();
    await this.idle(40);
    const end = typeof to === 'string' ? await this.point(to) : to;
    for (let i = 1; i <= steps; i++) {
      await this.page.mouse.move(start.x + (end.x - start.x) * i / steps, start.y + (end.y - start.y) * i / steps);
      await sleep(16);
    }
    await this.idle(60);
    if (before_drop) await before_drop();
    await this.page.mouse.up();
    await this.idle();
  }

  async press(...keys) {
    for (const key of keys) {
      await this.page.keyboard.press(key);
      await this.idle(40);
    }
  }

  async type(text) {
    await this.page.keyboard.type(text);
    await this.idle();
  }

  /** Id of the page's element that has the keyboard ("drawing", "field", …). */
  focus() {
    return this.page.evaluate(() => document.activeElement.id);
  }

  /** The text of the real input that lies over a drawn field; null when none is open. */
  field() {
    return this.page.evaluate(() => {
      const field = document.getElementById('field');
      return field.hidden ? null : field.value;
    });
  }

  clipboard() {
    return this.page.evaluate(() => navigator.clipboard.readText());
  }

  plan_text() {
    return this.page.evaluate(() => document.getElementById('plan-text').innerText);
  }

  /** A picture of the window; kept under a name in the folder of screenshots if one is given. */
  async picture(name) {
    const bytes = await this.page.screenshot({ animations: 'disabled', caret: 'hide' });
    if (name) {
      fs.mkdirSync(shots, { recursive: true });
      fs.writeFileSync(path.join(shots, `${name}.png`), bytes);
    }
    return PNG.sync.read(bytes);
  }
}

/** Pixels of two pictures of one size that differ at all. */
export function different_pixels(a, b) {
  if (a.width !== b.width || a.height !== b.height) throw new Error(`Pictures of different size: ${a.width} x ${a.height}, ${b.width} x ${b.height}`);
  return pixelmatch(a.data, b.data, null, a.width, a.height, { threshold: 0, includeAA: true });
}

/** The largest step of brightness (0 to 255) between neighbours in a row, and the picture's whole range. Blurred edges step less than sharp ones. */
export function sharpness(picture) {
  let step = 0, low = 255, high = 0;
  const grey = i => 0.299 * picture.data[i] + 0.587 * picture.data[i + 1] + 0.114 * picture.data[i + 2];
  for (let y = 0; y < picture.height; y++) {
    let before = null;
    for (let x = 0; x < picture.width; x++) {
      const now = grey((y * picture.width + x) * 4);
      low = Math.min(low, now);
      high = Math.max(high, now);
      if (before !== null) step = Math.max(step, Math.abs(now - before));
      before = now;
    }
  }
  return { step, range: high - low };
}

/** Browser and server for all tests of a file: {stage: {browser, server} once they run, with_planner(options, body)}. */
export function sound_planners() {
  const stage = {};
  before(async () => {
    stage.browser = await launch();
    stage.server = await serve();
  });
  after(async () => {
    await stage.browser.close();
    await stage.server.close();
  });
  return { stage, with_planner: (options, body) => with_sound_planner(stage, options, body) };
}

/** Runs `body` with a planner of its own, as wide as a desk, and closes it, whatever happens. A sound page has nothing to complain of. */
async function with_sound_planner({ browser, server }, { fragment = '', ...options }, body) {
  const planner = await Planner.open(browser, server.url + fragment, { width: 1440, height: 900, ...options });
  try {
    await body(planner);
    assert.deepEqual(planner.complaints, [], 'the page complained');
  } finally {
    await planner.close();
  }
}
