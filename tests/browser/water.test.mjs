// SPDX-License-Identifier: MIT
// The Water page by real mouse, keyboard and finger: blend, use, take back.
import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { different_pixels, sound_planners } from './harness.mjs';

const { with_planner } = sound_planners();

async function open_water(planner) {
  await planner.click('top.tab/water');
  await planner.page.waitForFunction(() => document.body.dataset.rest === 'here');
  await planner.idle();
}

async function fill(planner, id, text) {
  await planner.click(id);
  await planner.page.keyboard.press('Control+A');
  await planner.page.keyboard.type(text);
  await planner.page.keyboard.press('Enter');
  await planner.idle();
}

describe('the Water page', () => {
  test('the slider of RO water is dragged, the water is used, and one Undo brings the plan back', () => with_planner({}, async planner => {
    const start = (await planner.state()).plan;
    await open_water(planner);
    const before = await planner.picture('water');
    const slider = await planner.rect('water_sheet.ro_slider');
    await planner.drag('water_sheet.ro_slider', { x: slider.x + slider.width * 0.25, y: slider.y + slider.height / 2 }, {
      before_drop: async () => assert.ok(different_pixels(before, await planner.picture()) > 3000, 'bars, chart and bucket follow the hand'),
    });
    assert.ok((await planner.state()).rects['water_sheet.ro_usual'], 'there is a way back to the recipe');
    assert.deepEqual((await planner.state()).plan, start, 'a blend decides nothing');
    await planner.click('water_sheet.use');
    const used = (await planner.state()).plan;
    assert.ok(used.water.kh_dkh > start.water.kh_dkh, 'more tap water, more carbonate');
    await planner.click('top.undo');
    assert.deepEqual((await planner.state()).plan, start);
  }));

  test('mix and aim are dragged on the chart', () => with_planner({}, async planner => {
    await open_water(planner);
    const start = (await planner.state()).plan, mix = await planner.point('water_sheet.mark/mix'), tap = await planner.point('water_sheet.mark/tap');
    await planner.drag('water_sheet.mark/mix', { x: (mix.x + tap.x) / 2, y: (mix.y + tap.y) / 2 });
    const moved = await planner.point('water_sheet.mark/mix');
    assert.ok(moved.x > mix.x + 40 && moved.y < mix.y - 30, 'it lies along the line');
    const aim = await planner.point('water_sheet.mark/aim');
    await planner.drag('water_sheet.mark/aim', { x: aim.x + 70, y: aim.y - 30 });
    const aimed = await planner.point('water_sheet.mark/aim');
    assert.ok(Math.abs(aimed.x - aim.x - 70) < 6 && Math.abs(aimed.y - aim.y + 30) < 6, 'it stays where it was put');
    assert.deepEqual((await planner.state()).plan, start);
    await planner.drag('water_sheet.mark/tap', { x: tap.x + 40, y: tap.y - 30 });
    assert.ok((await planner.state()).plan.source.gh_dgh > start.source.gh_dgh, 'the tap is the plan\'s');
  }));

  test('by keyboard: to the page, to its way out, and back', () => with_planner({}, async planner => {
    await planner.click('top.tab/tank');
    await planner.press('Tab', 'Tab', 'Enter');  // the first shows where the keyboard is
    await planner.page.waitForFunction(() => document.body.dataset.rest === 'here');
    await planner.idle();
    assert.ok((await planner.state()).rects['water_sheet.chart'], 'the tab after the tank\'s is the water\'s');
    await planner.press('Enter');
    assert.ok((await planner.state()).rects['tank.front'], 'the keyboard stood on the way out');
    await planner.press('Tab', 'Enter', 'Escape');
    assert.ok((await planner.state()).rects['tank.front'], 'and went back to the tabs');
  }));

  test('at rest nothing is drawn', () => with_planner({}, async planner => {
    await open_water(planner);
    await planner.idle(600);
    const frames = await planner.frames();
    await planner.page.waitForTimeout(2000);
    assert.equal(await planner.frames(), frames);
  }));

  test('on a phone it is one column, and a finger draws the slider without scrolling it', () => with_planner({ width: 390, height: 844, hasTouch: true }, async planner => {
    await planner.click('top.file');
    await planner.click('top.tab/water');
    await planner.page.waitForFunction(() => document.body.dataset.rest === 'here');
    await planner.idle();
    await planner.picture('water-phone');
    const start = await planner.rect('water_sheet.ro_slider'), y = start.y + start.height / 2;
    const cdp = await planner.page.context().newCDPSession(planner.page);
    const touch = (type, ...points) => cdp.send('Input.dispatchTouchEvent', { type, touchPoints: points });
    await touch('touchStart', { x: start.x + start.width * 0.6, y });
    for (let i = 1; i <= 8; i++) {
      await touch('touchMove', { x: start.x + start.width * (0.6 - 0.05 * i), y: y + i });
      await planner.idle(20);
    }
    await touch('touchEnd');
    await planner.idle();
    const { rects } = await planner.state();
    assert.equal(rects['water_sheet.ro_slider'][1], start.y, 'the column stood still');
    assert.ok(rects['water_sheet.ro_usual'], 'the share was set');
  }));

  test('the recipe goes on paper: the conditioner first, the cautions, nothing of the drawing, black on white', () => with_planner({
    colorScheme: 'dark',
    init: () => { window.print = () => { window.asked_for_paper = true; }; },
  }, async planner => {
    await open_water(planner);
    await planner.click('water_sheet.print');
    await planner.page.waitForFunction(() => window.asked_for_paper);
    const paper = () => planner.page.evaluate(() => {
      const of = node => node && getComputedStyle(node);
      const page = document.getElementById('paper');
      return page && {
        words: page.textContent, first: [...page.querySelectorAll('p')].find(p => p.textContent.startsWith('1. ')).textContent, scripts: page.querySelectorAll('script, img, style').length,
        shown: of(page).display, drawing: of(document.getElementById('drawing')).display, ink: of(page).color, ground: of(document.body).backgroundColor,
      };
    });
    assert.equal((await paper()).shown, 'none', 'on the screen it is not seen');
    await planner.page.emulateMedia({ media: 'print' });
    const printed = await paper();
    assert.equal(printed.shown, 'block');
    assert.equal(printed.drawing, 'none');
    assert.equal(printed.ink, 'rgb(0, 0, 0)');
    assert.equal(printed.ground, 'rgb(255, 255, 255)');
    assert.match(printed.first, /conditioner/);
    assert.match(printed.words, /Never add acid/);
    assert.equal(printed.scripts, 0);
    assert.ok((await planner.page.pdf({ format: 'A4' })).length > 5000, 'a page comes out');
    await planner.page.emulateMedia({ media: 'screen' });
    await planner.page.evaluate(() => dispatchEvent(new Event('afterprint')));
    assert.equal(await paper(), null, 'and is gone afterwards');
  }));

  test('hardness in mmol/L and nitrate as N are chosen, typed, stored in degrees and NO3, and kept', () => with_planner({}, async planner => {
    await planner.click('top.units');
    await planner.click('top.units/hardness/2');
    await planner.click('top.units');
    await planner.click('top.units/nitrate/n');
    await open_water(planner);
    await fill(planner, 'water_sheet.tap.gh', '2');
    await fill(planner, 'water_sheet.tap.nitrate', '4');
    const { source } = (await planner.state()).plan;
    assert.ok(Math.abs(source.gh_dgh - 2 / 0.178326) < 0.01, `GH ${source.gh_dgh}`);
    assert.ok(Math.abs(source.nitrate_mg_l - 4 * 62.0049 / 14.0067) < 0.01, `NO3 ${source.nitrate_mg_l}`);
    const kept = await planner.page.evaluate(() => Object.entries(localStorage).filter(([key]) => /hardness|nitrate/.test(key)).map(([, value]) => value).sort());
    assert.deepEqual(kept, ['mmol', 'n']);
  }));

  test('salts are stepped by hand, and the recipe comes back', () => with_planner({}, async planner => {
    await open_water(planner);
    await planner.bring('water_sheet.grams/calcium-sulphate-dihydrate/more', { x: 150, y: 500 });
    const before = await planner.picture();
    await planner.click('water_sheet.grams/calcium-sulphate-dihydrate/more');
    assert.ok(different_pixels(before, await planner.picture()) > 200, 'what results is shown');
    await planner.click('water_sheet.to_recipe');
    assert.ok(!(await planner.state()).rects['water_sheet.to_recipe']);
  }));

  test('fish for a hard tap are judged by it until the keeper goes back to the aim', () => with_planner({}, async planner => {
    await open_water(planner);
    await fill(planner, 'water_sheet.tap.gh', '20');
    await fill(planner, 'water_sheet.tap.kh', '15');
    await planner.bring('water_sheet.fish', { x: 1200, y: 600 });
    await planner.click('water_sheet.fish');
    const { rects, plan } = await planner.state();
    assert.ok(rects['shelf.by_tap'] && rects['tank.front'], 'back at the tank, with a line that says so');
    assert.ok(plan.water, 'the plan is as it was');
    await planner.picture('shelf-by-tap');
    await planner.click('shelf.by_plan');
    assert.ok(!(await planner.state()).rects['shelf.by_tap']);
  }));
});
