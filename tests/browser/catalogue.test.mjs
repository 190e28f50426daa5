// SPDX-License-Identifier: MIT
// The page of a kind, a kind of one's own, what is sold under a word and what a shop has, by real events.
import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { sound_planners } from './harness.mjs';

const { with_planner } = sound_planners();
const rects = async planner => (await planner.state()).rects;
const rows = async planner => Object.keys(await rects(planner)).filter(id => id.startsWith('shelf.row/')).map(id => id.slice(10));

/** Types into the search of the shelf, over what it holds. */
async function search(planner, words) {
  await planner.click('shelf.search');
  await planner.press('Control+A');
  await planner.type(words);
  await planner.press('Enter');
  await planner.idle();
}

describe('the page of a kind', () => {
  test('opens from its row by the key I, adds a group and closes', () => with_planner({}, async planner => {
    await search(planner, 'ember tetra');
    const { plan } = await planner.state();
    await planner.hover('shelf.row/hyphessobrycon-amandae');
    await planner.click('shelf.more/hyphessobrycon-amandae');
    assert.ok((await rects(planner))['species.facts/Water'] || (await rects(planner))['species.picture']);
    await planner.picture('catalogue-species');
    await planner.click('species.add');
    const added = (await planner.state()).plan.stock.find(group => group.species === 'hyphessobrycon-amandae');
    assert.ok(added.count > 0);
    assert.equal(plan.stock.some(group => group.species === 'hyphessobrycon-amandae'), false);
    await planner.press('Escape');
    assert.equal((await rects(planner))['species.picture'], undefined);
  }));
});

describe('a kind of one’s own', () => {
  test('is written over a kind of the catalogue, kept, and there after a reload', () => with_planner({}, async planner => {
    await search(planner, 'ember tetra');
    await planner.hover('shelf.row/hyphessobrycon-amandae');
    await planner.click('shelf.more/hyphessobrycon-amandae');
    await planner.click('species.copy');
    await planner.click('own.name.common');
    await planner.press('Control+A');
    await planner.type('club ember');
    await planner.press('Enter');
    await planner.click('own.save');
    const kept = (await planner.state()).plan.own_species;
    assert.equal(kept.length, 1);
    assert.equal(kept[0].name.common[0].text, 'club ember');
    await planner.page.reload();
    await planner.running();
    assert.equal((await planner.state()).plan.own_species[0].name.common[0].text, 'club ember');
  }));
});

describe('sold under one name', () => {
  test('a typed trade word opens all that is sold under it, and one of them its page', () => with_planner({}, async planner => {
    await search(planner, 'siamese algae eater');
    await planner.click('shelf.label');
    const shown = Object.keys(await rects(planner)).filter(id => id.startsWith('label.kind/'));
    assert.deepEqual(shown, ['crossocheilus-oblongus', 'epalzeorhynchos-kalopterus', 'gyrinocheilus-aymonieri'].map(id => `label.kind/${id}`));
    await planner.picture('catalogue-label');
    await planner.click('label.kind/gyrinocheilus-aymonieri');
    assert.ok((await rects(planner))['species.picture']);
    await planner.press('Escape');
    assert.equal((await rects(planner))['species.picture'], undefined);
  }));

  test('on a phone the sheet lies inside the window', () => with_planner({ width: 390, height: 844, ratio: 2, hasTouch: true, isMobile: true }, async planner => {
    await planner.bring('shelf.search', { x: 195, y: 700 });
    await search(planner, 'molly');
    await planner.bring('shelf.label', { x: 195, y: 700 });
    const { x, y } = await planner.point('shelf.label');
    await planner.page.touchscreen.tap(x, y);
    await planner.idle();
    const scale = await planner.rect('label.scale');
    assert.ok(scale.x >= 0 && scale.x + scale.width <= 390, JSON.stringify(scale));
    await planner.picture('catalogue-label-phone');
  }));
});

describe('what my shop has', () => {
  test('is ticked, kept on the device and shown alone after a reload', () => with_planner({}, async planner => {
    await planner.click('shelf.filter/shop');
    assert.deepEqual(await rows(planner), []);
    await planner.click('shelf.shop/tick');
    for (const [words, species] of [['cherry barb', 'rohanella-titteya'], ['bala shark', 'balantiocheilos-melanopterus']]) {
      await search(planner, words);
      await planner.click(`shelf.row/${species}`);
    }
    await planner.click('shelf.shop/tick');
    assert.deepEqual(await rows(planner), ['rohanella-titteya', 'balantiocheilos-melanopterus'], 'closest fit first');
    await planner.picture('catalogue-shop');
    const { plan } = await planner.state();
    assert.equal(plan.stock.some(group => group.species === 'rohanella-titteya'), false, 'ticking adds nothing to the tank');
    await planner.page.reload();
    await planner.running();
    await planner.click('shelf.filter/shop');
    await planner.idle();
    assert.deepEqual((await rows(planner)).sort(), ['balantiocheilos-melanopterus', 'rohanella-titteya']);
  }));

  test('a group of the catalogue is shown alone', () => with_planner({}, async planner => {
    await planner.click('shelf.group');
    await planner.click('shelf.group/brackish');
    assert.deepEqual((await rows(planner)).sort(),
                     ['monodactylus-argenteus', 'monodactylus-sebae', 'scatophagus-argus', 'toxotes-jaculatrix']);
  }));
});
