/** One check as rows of the table: its name and source once, then a row for each figure. */
import type { Comparison } from '../../../vectors/run';
import { written, writtenDifference } from '../../../vectors/written';
import { button, make } from './dom';
import { compute, type Entry } from './entries';
import { titleOf } from './filters';
import type { Proof } from './proof';

/** Figures of one check that are shown before the reader asks for all. */
const FIRST = 6;
/** The longest text in a cell; the whole is in the editor. */
const LONGEST = 300;

const shortened = (text: string): string => (text.length <= LONGEST ? text : `${text.slice(0, LONGEST)} …`);

/** A cell that carries its heading along, for narrow screens. */
const cell = (heading: string, className: string, ...children: (Node | string)[]): HTMLTableCellElement =>
  make('td', { role: 'cell', 'data-heading': heading, class: className }, ...children);

function figureCells({ field, published, computed, difference, passed }: Comparison): HTMLTableCellElement[] {
  const off = writtenDifference({ field, published, computed, difference, passed });
  return [
    cell('Field', 'field', field === '' ? 'the answer' : field),
    cell('Published', 'figure', shortened(written(published))),
    cell('Computed', 'figure', shortened(written(computed))),
    cell('Difference', 'figure', off === '' ? (passed ? 'same' : 'not the same') : off),
    cell('Result', passed ? 'good' : 'bad', passed ? 'holds' : 'differs'),
  ];
}

const waiting = (): HTMLTableCellElement[] => [
  make('td', { role: 'cell', colspan: '5', class: 'waiting' }, 'not computed yet'),
];

/** The tolerance in words. */
function toleranceOf({ tolerance = 'exact' }: Entry['check']): string {
  if (tolerance === 'exact') return 'exact';
  return 'absolute' in tolerance
    ? `within ${tolerance.absolute}`
    : `within ${Number((tolerance.relative * 100).toPrecision(3))} %`;
}

export interface Drawing {
  readonly proof: Proof;
  /** Hears that a check was computed anew. */
  readonly changed: () => void;
}

/** Draws a check into its part of the table, in place of what is there. */
export function draw(entry: Entry, body: HTMLTableSectionElement, drawing: Drawing): void {
  const { check } = entry;
  const all = entry.outcome?.comparisons ?? [];
  const shown = entry.open ? all : all.slice(0, FIRST);
  const more = all.length - shown.length;
  const rows = shown.length === 0 ? [waiting()] : shown.map(figureCells);
  const height = String(rows.length);
  const edit = button('Change the input', () => openEditor(entry, body, drawing), {
    'aria-label': `Change the input of ${check.id}`,
    'aria-expanded': 'false',
    class: 'edit',
  });
  const name = make(
    'th',
    { role: 'rowheader', scope: 'rowgroup', class: 'name', rowspan: height },
    make('span', { class: 'call' }, check.call),
    ' ',
    make('span', { class: 'id' }, check.id),
    ...('changed' in entry ? [' ', make('strong', { class: 'mark' }, 'input changed')] : []),
    make('div', { class: 'buttons' }, edit),
  );
  if (more > 0) {
    const open = () => {
      entry.open = true;
      draw(entry, body, drawing);
      body.querySelector<HTMLButtonElement>('button.edit')?.focus();
    };
    name.lastElementChild?.append(
      ' ',
      button(`All ${all.length} figures`, open, { 'aria-label': `All ${all.length} figures of ${check.id}` }),
    );
  }
  const source = cell(
    'Source',
    'source',
    ...check.sources.map((id) => make('span', { class: 'title' }, titleOf(drawing.proof, id))),
    ...(check.locator === undefined ? [] : [make('span', { class: 'locator' }, check.locator)]),
    make('span', { class: 'kind' }, `${check.group}; ${toleranceOf(check)}`),
  );
  source.rowSpan = rows.length;
  body.replaceChildren(
    ...rows.map((cells, index) => make('tr', { role: 'row' }, ...(index === 0 ? [name, source] : []), ...cells)),
  );
  body.classList.toggle('failed', entry.outcome?.passed === false);
}

/** A row under the check: its input as JSON, to change and compute; and the whole answer. */
function openEditor(entry: Entry, body: HTMLTableSectionElement, drawing: Drawing): void {
  const { check } = entry;
  const opened = body.querySelector<HTMLButtonElement>('button.edit');
  if (body.querySelector('.editor') !== null) {
    body.querySelector('.editor')?.remove();
    opened?.setAttribute('aria-expanded', 'false');
    return;
  }
  compute(entry);
  const redraw = (): HTMLButtonElement | null => {
    draw(entry, body, drawing);
    body.append(row);
    const again = body.querySelector<HTMLButtonElement>('button.edit');
    again?.setAttribute('aria-expanded', 'true');
    return again;
  };
  const label = `Input of ${check.id}, as JSON`;
  const text = make('textarea', { 'aria-label': label, spellcheck: 'false' });
  text.value = JSON.stringify('changed' in entry ? entry.changed : check.input, null, 2) ?? '';
  text.rows = Math.min(16, text.value.split('\n').length + 1);
  const trouble = make('p', { role: 'alert', class: 'bad' });
  const answer = make('pre', { tabindex: '0', role: 'region', 'aria-label': `Whole answer of ${check.id}` });
  const result = make('p', { role: 'status' });
  const say = () => {
    answer.textContent = JSON.stringify(entry.outcome?.answer, null, 2) ?? 'nothing';
    result.textContent = entry.outcome?.passed ? 'Holds.' : 'Differs from what is published.';
  };
  const recompute = () => {
    redraw();
    say();
    drawing.changed();
  };
  const apply = button('Compute', () => {
    trouble.textContent = '';
    try {
      entry.changed = JSON.parse(text.value);
    } catch (error) {
      trouble.textContent = `This is not JSON: ${(error as Error).message}`;
      return;
    }
    if (JSON.stringify(entry.changed) === JSON.stringify(check.input)) delete entry.changed;
    compute(entry);
    recompute();
    apply.focus();
  });
  const back = button('Put it back', () => {
    trouble.textContent = '';
    delete entry.changed;
    compute(entry);
    text.value = JSON.stringify(check.input, null, 2) ?? '';
    recompute();
    back.focus();
  });
  const row = make(
    'tr',
    { role: 'row', class: 'editor' },
    make(
      'td',
      { role: 'cell', colspan: '7' },
      text,
      trouble,
      make('div', { class: 'buttons' }, apply, ' ', back),
      result,
      make('details', {}, make('summary', {}, 'Whole answer'), answer),
    ),
  );
  redraw();
  say();
  text.focus();
}
