// SPDX-License-Identifier: MIT
// What the page does for the program, by name: drafts, address, settings, clipboard, files, live region, text form, states. The program
// passes and gets text only. boot.js fills in `assets` and `drafts` before the program starts.
import { plan_text } from './plan_text.js';

const by_id = id => document.getElementById(id);
const KEEP_AFTER_MS = 300;
const LINK_EVERY_MS = 1000;
const SAY_AFTER_MS = 500;
const MOST_FILE_BYTES = 4 * 1024 * 1024;
const SETTING = 'shoalwright.setting.';

let program = null;     // the calls into the program, once it listens
let draft_text = '';    // last text given to keep_draft, or found at the start
let draft_timer = 0;
let told_full = false;
let link = '';          // last fragment given to set_link
let link_timer = 0;
let link_set_ms = -Infinity;
let say_timer = 0;

const trouble = sentence => program && program.trouble(sentence);

function write_draft() {
  clearTimeout(draft_timer);
  draft_timer = 0;
  try {
    page.drafts.keep(draft_text, link, location.hash);
    told_full = false;
  } catch {
    if (!told_full) trouble('This device has no room to keep the plan; save it as a file or copy its link.');
    told_full = true;
  }
}

function write_link() {
  clearTimeout(link_timer);
  link_timer = 0;
  link_set_ms = performance.now();
  if (location.hash !== link) history.replaceState(history.state, '', link);
}

function save(name, text) {
  const type = name.endsWith('.json') ? 'application/json' : name.endsWith('.ics') ? 'text/calendar' : 'text/plain';
  const a = document.createElement('a');
  a.href = URL.createObjectURL(new Blob([text], { type }));
  a.download = name;
  a.click();
  setTimeout(() => URL.revokeObjectURL(a.href), 60000);
}

async function copy(text) {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    // Plain http, or a browser that wants it done at once: through a selected area.
    const back = document.activeElement, area = document.createElement('textarea');
    area.value = text;
    area.className = 'copy-area';
    document.body.append(area);
    area.select();
    const done = document.execCommand('copy');
    area.remove();
    if (back) back.focus({ preventScroll: true });
    return done;
  }
}

async function take_file(file) {
  if (!program) return;
  if (file.size > MOST_FILE_BYTES) return trouble(`${file.name} is larger than any plan, so it was not opened.`);
  try {
    program.file(file.name, await file.text());
  } catch {
    trouble(`${file.name} could not be read.`);
  }
}

function set_state(state) {
  document.body.dataset.state = state;
}

const setting = name => {
  try {
    return localStorage.getItem(SETTING + name) || '';
  } catch {
    return '';
  }
};

export function apply_theme() {
  const theme = setting('theme');
  if (theme === 'light' || theme === 'dark') document.documentElement.dataset.theme = theme;
  else delete document.documentElement.dataset.theme;
}

/** The failed state: what is missing, what to do, and a way to take the plan along. */
export function fail(what, what_to_do) {
  if (document.body.dataset.state === 'failed') return;
  const plan_link = link || (location.hash.startsWith('#p=') ? location.hash : '');
  by_id('failed-what').textContent = what;
  by_id('failed-do').textContent = what_to_do;
  by_id('failed-link').value = plan_link ? location.href.split('#')[0] + plan_link : '';
  by_id('failed-link-row').hidden = !plan_link;
  by_id('failed-save').hidden = draft_text === '';
  by_id('failed').hidden = false;
  show_text(false);
  set_state('failed');
}

/** Says what is wrong while the program goes on for the text form: `state` "without-drawing" or "lost". */
function go_on_as_text(state, what, what_to_do) {
  fail(what, what_to_do);
  set_state(state);
}

function show_text(shown) {
  by_id('text').classList.toggle('shown', shown);
  if (shown) by_id('text').focus();
}

const set_plan_text = plan_text(by_id('plan-text'), action => program && program.action(action));

export const page = {
  assets: {},
  drafts: null,

  connect(calls) { program = calls; },
  /** Fetches the second file of the program. */
  fetch_rest() {
    document.body.dataset.rest = 'loading';
    page.add_rest().then(() => program.rest(), () => {
      document.body.dataset.rest = 'missing';
      trouble('A part of the planner could not be loaded. Check the connection, then try again.');
    });
  },
  rest_here: () => document.body.dataset.rest === 'here' ? 'yes' : '',
  ready() {
    if (document.body.dataset.state !== 'loading') return;
    set_state('running');
    performance.mark('shoalwright-first-frame');
    if (matchMedia('(forced-colors: active)').matches) show_text(true);
  },
  without_drawing() {
    go_on_as_text('without-drawing', 'This browser cannot draw the tank: WebGL 2 is missing or switched off.',
      'Switch on graphics acceleration in the browser’s settings, or open the link in another browser. The plan as text is below.');
  },
  drawing_lost(lost) {
    if (lost && document.body.dataset.state === 'running') {
      go_on_as_text('lost', 'The browser has taken the drawing away for a while.',
        'It usually comes back by itself. Nothing of the plan is lost; it is below as text.');
    } else if (!lost && document.body.dataset.state === 'lost') {
      by_id('failed').hidden = true;
      set_state('running');
      if (document.activeElement === document.body) by_id('drawing').focus({ preventScroll: true });
    }
  },
  show_failure(sentence) { fail(sentence, 'Try again, or take the plan along with its link.'); },

  address() {
    return location.href.split('#')[0];
  },
  today() {
    const now = new Date(), two = n => String(n).padStart(2, '0');
    return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  },

  draft: () => page.drafts.draft,
  other_drafts: () => page.drafts.others().map(({ id, at, text }) => `${id}\x1f${at}\x1f${text}\x1e`).join(''),
  keep_draft(text) {
    draft_text = text;
    if (!draft_timer) draft_timer = setTimeout(write_draft, KEEP_AFTER_MS);
  },
  leave_draft() {
    if (draft_timer) write_draft();
    page.drafts.leave();
  },

  link_at_start: () => page.drafts.link,
  set_link(fragment) {
    link = fragment;
    if (link_timer) return;
    const wait = link_set_ms + LINK_EVERY_MS - performance.now();
    link_timer = setTimeout(write_link, Math.max(0, wait));
  },

  setting,
  keep_setting(name, value) {
    try {
      if (value === '') localStorage.removeItem(SETTING + name);
      else localStorage.setItem(SETTING + name, value);
    } catch {
      trouble('This device has no room to keep the setting; it holds until the page is closed.');
    }
    if (name === 'theme') apply_theme();
  },

  async copy(text) {
    if (!await copy(text)) trouble('The browser did not allow copying; the link is in the address bar.');
  },
  open_file: () => by_id('file').click(),
  save_file: save,

  say(text) {
    clearTimeout(say_timer);
    say_timer = setTimeout(() => { by_id('live').textContent = text; }, SAY_AFTER_MS);
  },
  set_plan_text,
  /** A page of its own on paper; on the screen it is not seen. */
  print_page(text) {
    const paper = document.createElement('article');
    paper.id = 'paper';
    document.body.append(paper);
    document.body.classList.add('on-paper');
    plan_text(paper)(text);
    addEventListener('afterprint', () => {
      paper.remove();
      document.body.classList.remove('on-paper');
    }, { once: true });
    setTimeout(print);  // the dialogue holds everything up: not within a frame
  },
  set_title(title) { document.title = title; },
};

/** Joins the page's own controls and events to the services. Call once. */
export function listen() {
  draft_text = page.drafts.link ? '' : page.drafts.draft;
  window.addEventListener('hashchange', () => {
    const hash = location.hash;
    if (!hash.startsWith('#p=') || hash === link || !program) return;
    clearTimeout(link_timer);
    link_timer = 0;
    program.link(hash);
  });
  const flush = () => {
    if (draft_timer) write_draft();
    if (link_timer) write_link();
  };
  window.addEventListener('pagehide', flush);
  document.addEventListener('visibilitychange', () => document.hidden && flush());

  by_id('skip').addEventListener('click', e => {
    e.preventDefault();  // the fragment of the address belongs to the plan
    show_text(true);
  });
  by_id('text-back').addEventListener('click', () => {
    show_text(false);
    by_id('drawing').focus({ preventScroll: true });
  });
  by_id('text').addEventListener('keydown', e => {
    if (e.key === 'Escape' && by_id('text').classList.contains('shown')) by_id('text-back').click();
  });
  by_id('failed-again').addEventListener('click', () => {
    flush();
    location.reload();
  });
  by_id('failed-copy').addEventListener('click', async () => {
    const copied = await copy(by_id('failed-link').value);
    by_id('failed-copy').textContent = copied ? 'Copied' : 'Select the link to copy it';
  });
  by_id('failed-save').addEventListener('click', () => save('plan.json', draft_text));

  const chooser = by_id('file');
  chooser.addEventListener('change', () => {
    if (chooser.files[0]) take_file(chooser.files[0]);
    chooser.value = '';  // the same file may be chosen again
  });
  window.addEventListener('dragover', e => {
    if (!e.dataTransfer || !e.dataTransfer.types.includes('Files')) return;
    e.preventDefault();  // or a missed drop would leave the page
    e.dataTransfer.dropEffect = 'copy';
  });
  window.addEventListener('drop', e => {
    if (!e.dataTransfer || !e.dataTransfer.types.includes('Files')) return;
    e.preventDefault();
    const file = [...e.dataTransfer.files].find(({ name }) => name.toLowerCase().endsWith('.json'));
    if (file) take_file(file);
    else trouble('Only plans saved as .json files can be opened here.');
  });
}
