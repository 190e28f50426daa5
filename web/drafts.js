// SPDX-License-Identifier: MIT
// Plans kept on this device. Each tab writes its own draft, so several tabs never overwrite each other. A tab is alive as long as it holds
// the lock of its draft's id; a new tab without a link goes on with the newest draft that no living tab holds.

const PREFIX = 'shoalwright.draft.';
const MOST_DRAFTS = 200;  // the oldest beyond them go, or opening many links would fill the device one day
const MINE = 'shoalwright.draft';

/** One draft: {at: ms, link, address, text} (its link, and the fragment that the address showed meanwhile), or null where the entry is none. */
function read(storage, id) {
  try {
    const draft = JSON.parse(storage.getItem(PREFIX + id));
    return typeof draft.at === 'number' && typeof draft.text === 'string' && typeof draft.link === 'string' && typeof draft.address === 'string' ? draft : null;
  } catch {
    return null;
  }
}

/** All drafts, newest first: [{id, at, link, address, text}]. */
function all(storage) {
  const drafts = [];
  for (let i = 0; i < storage.length; i++) {
    const key = storage.key(i);
    if (!key.startsWith(PREFIX)) continue;
    const id = key.slice(PREFIX.length), draft = read(storage, id);
    if (draft) drafts.push({ id, ...draft });
  }
  return drafts.sort((a, b) => b.at - a.at);
}

/** Holds the lock of `id` until the tab goes. False: another tab holds it. Where locks are missing (plain http) every tab counts as new. */
function claim(id) {
  return new Promise(resolve => {
    if (!navigator.locks) return resolve(false);
    navigator.locks.request(PREFIX + id, { ifAvailable: true }, lock => {
      resolve(lock !== null);
      return lock && new Promise(() => {});
    }).catch(() => resolve(false));
  });
}

async function held_ids() {
  if (!navigator.locks) return new Set();
  const { held } = await navigator.locks.query();
  return new Set(held.map(lock => lock.name).filter(name => name.startsWith(PREFIX)).map(name => name.slice(PREFIX.length)));
}

const new_id = () => Date.now().toString(36) + '-' + Math.floor(Math.random() * 36 ** 6).toString(36);

/**
 * Finds out what this tab goes on with; `link` is the address's fragment. The result:
 *   draft   text of the plan to go on with, or ''
 *   link    the fragment when it is not the tab's own, or ''
 *   keep(text, link, address)  writes the draft; throws when the device has no room
 *   leave() later writes go to a new draft
 *   others() all other drafts, newest first
 */
export async function open_drafts(link) {
  let storage, session;
  try {
    storage = window.localStorage;
    session = window.sessionStorage;
  } catch {  // storage switched off: the plan still works, its link keeps it
    return { draft: '', link, keep() { throw new Error('no storage'); }, leave() {}, others: () => [] };
  }
  const before = session.getItem(MINE);
  const own = before ? read(storage, before) : null;
  const kept = all(storage);
  const held = kept.length ? await held_ids() : new Set();
  for (const old of kept.slice(MOST_DRAFTS)) if (!held.has(old.id)) storage.removeItem(PREFIX + old.id);
  const foreign = link !== '' && !(own && (own.link === link || own.address === link));
  let id = '', draft = own;
  if (own && !foreign && await claim(before)) id = before;
  if (!draft && !foreign) {
    const left = all(storage).find(({ id }) => !held.has(id));
    if (left) {
      draft = left;
      if (await claim(left.id)) id = left.id;
    }
  }
  const turn_to = next => {
    id = next;
    session.setItem(MINE, id);
  };
  if (id === '') {  // a link that is not ours, or a copy of a living tab: what is kept stays as it is
    id = new_id();
    claim(id);  // nobody else can have a new one
  }
  turn_to(id);
  return {
    draft: draft ? draft.text : '',
    link: foreign ? link : '',
    keep: (text, link, address) => storage.setItem(PREFIX + id, JSON.stringify({ at: Date.now(), link, address, text })),
    leave: () => {
      const mine = read(storage, id);
      if (mine && all(storage).some(other => other.id !== id && other.text === mine.text)) storage.removeItem(PREFIX + id);
      turn_to(new_id());
      claim(id);
    },
    others: () => all(storage).filter(other => other.id !== id),
  };
}
