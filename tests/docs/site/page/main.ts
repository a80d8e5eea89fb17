/** The proof page: recomputes every check vector in the reader's browser. */
import { found, make } from './dom';
import { compute, computeAll, entriesOf, totalsOf } from './entries';
import { choicesOf, PICKERS, type Picked, pick, pickedBy, titleOf, waits } from './filters';
import type { Proof } from './proof';
import { type Drawing, draw } from './table';

/** What `vectors.js` holds: a `Proof` as JSON, packed by gzip, in base64. */
declare const packed: string;

/** Checks on one page of the table. */
const ON_A_PAGE = 200;

const count = (value: number): string => value.toLocaleString('en-US');
const bytes = Uint8Array.from(atob(packed), (letter) => letter.charCodeAt(0));
const unpacked = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
const proof = (await new Response(unpacked).json()) as Proof;
const entries = entriesOf(proof);
const bodies = new Map<(typeof entries)[number], HTMLTableSectionElement>();
const table = found<HTMLTableElement>('checks');
const words = found<HTMLInputElement>('words');
const pickers = PICKERS.map((name) => found<HTMLSelectElement>(name));
let list = entries;
let page = 0;

const drawing: Drawing = { proof, changed: sayTotals };

const picked = (): Picked =>
  Object.fromEntries([...pickers, words].map((element) => [element.id, element.value])) as Picked;

/** Totals, beside what Node came to. */
function sayTotals(): void {
  const { checks, passed } = totalsOf(entries);
  const changed = entries.filter((entry) => 'changed' in entry).length;
  const { node } = proof;
  const same = checks === node.checks && passed === node.passed;
  found('passed').textContent = count(passed);
  found('failed').textContent = count(checks - passed);
  found('node').textContent = `${count(node.passed)} hold, ${count(node.checks - node.passed)} differ`;
  found('verdict').textContent = changed
    ? `You changed ${changed === 1 ? 'one input' : `${changed} inputs`}. Put them back to compare with Node.`
    : same
      ? 'Your browser and Node come to the same.'
      : 'Your browser and Node do not come to the same. Please report it, with the name of your browser.';
  found('back').hidden = changed === 0;
}

function drawPage(): void {
  bodies.clear();
  for (const body of [...table.tBodies]) body.remove();
  const last = Math.max(0, Math.ceil(list.length / ON_A_PAGE) - 1);
  page = Math.min(Math.max(page, 0), last);
  const shown = list.slice(page * ON_A_PAGE, (page + 1) * ON_A_PAGE);
  for (const entry of shown) {
    const body = make('tbody', { role: 'rowgroup', class: 'check' });
    bodies.set(entry, body);
    draw(entry, body, drawing);
  }
  table.append(...bodies.values());
  const from = page * ON_A_PAGE + 1;
  found('matches').textContent =
    list.length === 0
      ? 'No check is like this.'
      : `${count(list.length)} of ${count(entries.length)} checks; ${count(from)} to ${count(from + shown.length - 1)} are below.`;
  for (const pages of document.querySelectorAll('.pages')) {
    const [first, number, next] = pages.children as unknown as [HTMLButtonElement, HTMLElement, HTMLButtonElement];
    first.disabled = page === 0;
    next.disabled = page === last;
    number.textContent = `Page ${page + 1} of ${last + 1}`;
  }
}

function drawList(): void {
  list = pick(entries, picked());
  page = 0;
  drawPage();
}

/** The checks of this page that were waiting and are computed by now. */
function drawComputed(): void {
  for (const [entry, body] of bodies)
    if (entry.outcome !== undefined && body.querySelector('.waiting') !== null) draw(entry, body, drawing);
}

function fillPickers(): void {
  for (const name of ['module', 'function', 'kind', 'source'] as const) {
    const inModule = found<HTMLSelectElement>('module').value;
    const of = name === 'function' && inModule !== '' ? entries.filter(({ module }) => module === inModule) : entries;
    const select = found<HTMLSelectElement>(name);
    if (name !== 'function' && select.options.length > 1) continue;
    const { value } = select;
    const options = choicesOf(of, pickedBy[name]).map(([each, checks]) =>
      make('option', { value: each }, `${name === 'source' ? titleOf(proof, each) : each} (${count(checks)})`),
    );
    if (name === 'source') options.sort((a, b) => a.text.localeCompare(b.text));
    select.replaceChildren(select.options[0] as HTMLOptionElement, ...options);
    select.value = options.some((option) => option.value === value) ? value : '';
  }
}

for (const element of pickers)
  element.addEventListener('change', () => {
    if (element.id === 'module') fillPickers();
    drawList();
  });
words.addEventListener('input', drawList);
for (const pages of document.querySelectorAll('.pages')) {
  const [first, , next] = pages.children;
  const turn = (by: number) => () => {
    page += by;
    drawPage();
    // the reader goes on at the top of the list
    found('matches').focus();
    found('matches').scrollIntoView();
  };
  first?.addEventListener('click', turn(-1));
  next?.addEventListener('click', turn(1));
}
found('back').addEventListener('click', () => {
  for (const entry of entries) {
    if (!('changed' in entry)) continue;
    delete entry.changed;
    compute(entry);
  }
  sayTotals();
  drawPage();
  found('verdict').focus();
});

// on narrow screens the rows are blocks; a browser may then take them for no table
table.setAttribute('role', 'table');
table.tHead?.setAttribute('role', 'rowgroup');
table.tHead?.rows[0]?.setAttribute('role', 'row');
for (const heading of table.tHead?.rows[0]?.cells ?? []) heading.setAttribute('role', 'columnheader');
fillPickers();
drawList();
const progress = found<HTMLProgressElement>('progress');
progress.max = entries.length;
await computeAll(entries, ({ done, milliseconds }) => {
  progress.value = done;
  const { passed, checks } = totalsOf(entries.slice(0, done));
  found('passed').textContent = count(passed);
  found('failed').textContent = count(checks - passed);
  found('time').textContent =
    `${count(done)} of ${count(entries.length)} computed, ${(milliseconds / 1000).toFixed(1)} s`;
  drawComputed();
});
document.body.dataset.finished = 'true';
sayTotals();
if (waits(picked())) drawList();
