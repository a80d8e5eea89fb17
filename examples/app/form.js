/**
 * The form and the request of `planDay` have the same shape: a control says its field, a list says where its rows go.
 * So the form can be read, filled and marked by paths alone.
 */
import { element } from './element.js';

const keysOf = (path) => path.split(/[.[\]]+/).filter((key) => key !== '');
const valueAt = (from, path) => keysOf(path).reduce((at, key) => at?.[key], from);

function put(target, path, value) {
  const keys = keysOf(path);
  const last = keys.pop();
  let at = target;
  keys.forEach((key, index) => {
    at[key] ??= /^\d+$/.test(keys[index + 1] ?? last) ? [] : {};
    at = at[key];
  });
  at[last] = value;
}

/** What was typed. A count is a number to the library; a quantity stays text, for the library reads its unit. */
function typed(control) {
  const text = control.value.trim();
  return 'number' in control.dataset && /^\d+$/.test(text) ? Number(text) : text;
}

const controlsOf = (part) => [...part.querySelectorAll('[data-field]')];
const isBlank = (row) =>
  controlsOf(row).every((control) => control.tagName === 'SELECT' || control.value.trim() === '');

/** The day as typed, and the control of each path. A row with nothing in it is left out. */
export function readForm(form) {
  const controls = new Map();
  for (const list of form.querySelectorAll('[data-list]')) {
    const rows = [...list.children].filter((row) => !isBlank(row));
    rows.forEach((row, index) => {
      for (const control of controlsOf(row)) {
        controls.set(`${list.dataset.list}[${index}].${control.dataset.field}`, control);
      }
    });
  }
  for (const control of controlsOf(form)) {
    if (control.closest('[data-list]') === null) controls.set(control.dataset.field, control);
  }
  const day = {};
  for (const [path, control] of controls) if (typed(control) !== '') put(day, path, typed(control));
  return { day, controls };
}

/** Puts a day into the form. */
export function fillForm(form, day) {
  for (const list of form.querySelectorAll('[data-list]')) {
    list.replaceChildren();
    for (const entry of valueAt(day, list.dataset.list) ?? [{}]) addRow(list, entry);
  }
  for (const control of controlsOf(form)) {
    if (control.closest('[data-list]') === null) control.value = valueAt(day, control.dataset.field) ?? '';
  }
}

/** Adds a row to a list. A screen reader hears which row a control is in. */
export function addRow(list, entry = {}) {
  const row = document.getElementById(list.dataset.row).content.firstElementChild.cloneNode(true);
  for (const control of controlsOf(row)) {
    const value = valueAt(entry, control.dataset.field) ?? '';
    // a choice that is not listed yet is kept until its list is here
    if (control.tagName === 'SELECT' && value !== '') control.append(new Option(value));
    control.value = value;
  }
  list.append(row);
  nameRows(list);
  return row;
}

export function removeRow(row) {
  const list = row.parentElement;
  row.remove();
  nameRows(list);
}

function nameRows(list) {
  [...list.children].forEach((row, index) => {
    row.setAttribute('aria-label', `${list.dataset.row} ${index + 1}`);
    row.querySelector('[data-remove]').setAttribute('aria-label', `Remove ${list.dataset.row} ${index + 1}`);
  });
}

/** The control that a problem is about: its own, the first one inside it, the one around it, or the first of its list. */
function controlFor(path, { form, controls }) {
  const within = (inner, outer) => inner.startsWith(`${outer}.`) || inner.startsWith(`${outer}[`);
  const paths = [...controls.keys()];
  const near = paths.find((each) => within(each, path)) ?? paths.find((each) => within(path, each));
  return controls.get(path) ?? controls.get(near) ?? form.querySelector(`[data-list="${path}"] [data-field]`);
}

/** A problem in the words of a cook: what the field takes, and the nearest right words. */
function wordsOf({ expected, given, nearest = [] }) {
  const got = given === undefined ? '' : ` You typed ${JSON.stringify(given)}.`;
  const meant = nearest.length === 0 ? '' : ` Did you mean ${nearest.join(' or ')}?`;
  return `This takes ${expected.replace(/\.$/, '')}.${got}${meant}`;
}

/** Shows each problem at its field, and the rest in `elsewhere`; answers the first control that has one. */
export function showProblems(problems, { form, controls, elsewhere }) {
  for (const shown of form.querySelectorAll('p.problem')) shown.remove();
  elsewhere.replaceChildren();
  for (const control of controlsOf(form)) {
    control.removeAttribute('aria-invalid');
    control.removeAttribute('aria-describedby');
  }
  problems.forEach((problem, index) => {
    const control = controlFor(problem.path, { form, controls });
    if (control === null || control.hasAttribute('aria-invalid')) {
      elsewhere.append(element('li', {}, problem.message));
      return;
    }
    const id = `problem-${index}`;
    control.setAttribute('aria-invalid', 'true');
    control.setAttribute('aria-describedby', id);
    control.closest('label').after(element('p', { id, className: 'problem' }, wordsOf(problem)));
  });
  return form.querySelector('[aria-invalid]');
}
