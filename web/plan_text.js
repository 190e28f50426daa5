// SPDX-License-Identifier: MIT
// The plan as text: lines of the program become nodes of the page. Never read as HTML; nodes whose text did not change stay, so that a
// screen reader does not lose its place.

/** Groups lines into blocks: {kind, rows} with rows of cells. Runs of items, of table rows and of buttons are one block. */
export function blocks_of(text) {
  const blocks = [];
  for (const line of text.split('\n')) {
    if (line.trim() === '') continue;
    const kind = line.startsWith('# ') ? 'title' : line.startsWith('## ') ? 'heading' : line.startsWith('- ') ? 'list'
      : line.startsWith('| ') ? 'table' : line.startsWith('! ') ? 'buttons' : 'paragraph';
    const words = kind === 'paragraph' ? line : line.slice(line.indexOf(' ') + 1);
    const row = kind === 'table' ? words.replace(/ ?\|\s*$/, '').split(' | ') : kind === 'buttons' ? [words.split(' ', 1)[0], words.slice(words.indexOf(' ') + 1)] : [words];
    const last = blocks[blocks.length - 1];
    if (last && last.kind === kind && ['list', 'table', 'buttons'].includes(kind)) last.rows.push(row);
    else blocks.push({ kind, rows: [row] });
  }
  return blocks;
}

function element(name, text, children = []) {
  const node = document.createElement(name);
  if (text !== undefined) node.textContent = text;
  node.append(...children);
  return node;
}

function node_of({ kind, rows }, act) {
  switch (kind) {
    case 'title': return element('h2', rows[0][0]);
    case 'heading': return element('h3', rows[0][0]);
    case 'list': return element('ul', undefined, rows.map(([text]) => element('li', text)));
    case 'table': return element('table', undefined, rows.map((cells, i) => element('tr', undefined, cells.map(cell => {
      const node = element(i === 0 ? 'th' : 'td', cell);
      if (i === 0) node.scope = 'col';
      return node;
    }))));
    case 'buttons': return element('p', undefined, rows.map(([action, label]) => {
      const button = element('button', label);
      button.type = 'button';
      button.addEventListener('click', () => act(action));
      return button;
    }));
    default: return element('p', rows[0][0]);
  }
}

/** Keeps `region` in step with the text given to the returned function; `act` hears of its buttons. */
export function plan_text(region, act) {
  let shown = [];
  return text => {
    const wanted = blocks_of(text).map(block => ({ block, key: JSON.stringify(block) }));
    let head = 0, tail = 0;
    while (head < shown.length && head < wanted.length && shown[head].key === wanted[head].key) head++;
    while (tail < shown.length - head && tail < wanted.length - head && shown[shown.length - 1 - tail].key === wanted[wanted.length - 1 - tail].key) tail++;
    const focused = region.contains(document.activeElement) ? document.activeElement.textContent : null;
    for (const old of shown.splice(head, shown.length - head - tail)) old.node.remove();
    const fresh = wanted.slice(head, wanted.length - tail).map(({ block, key }) => ({ key, node: node_of(block, act) }));
    const before = shown[head] ? shown[head].node : null;
    for (const { node } of fresh) region.insertBefore(node, before);
    shown.splice(head, 0, ...fresh);
    if (focused !== null && !region.contains(document.activeElement)) {
      const same = [...region.querySelectorAll('button')].find(button => button.textContent === focused);
      if (same) same.focus();
    }
  };
}
