/**
 * From a harvest and a kitchen to the ways to keep it and a plan for the day. The form is the request: `check` names what
 * is wrong with it by path, `waysToKeep` and `planDay` take it as it is, and `runSheet` makes the plan a page to print.
 */
import { element } from './element.js';
import { addRow, fillForm, readForm, removeRow, showProblems } from './form.js';
import { inventedDay } from './invented.js';
import { call, choicesFor, problemsOf } from './library.js';
import { showPlan } from './result.js';
import { behind, refusals, wayItem } from './ways.js';

const part = (id) => document.getElementById(id);
const form = part('day');
const KEPT = 'stillroom-example-day';

/** What the page remembers: the day as typed, the recipes chosen, and whether it is still the invented one. */
const state = JSON.parse(localStorage.getItem(KEPT) ?? 'null') ?? { day: inventedDay, chosen: {}, invented: true };

/** Remembers the state. A plan on the page is of what was typed before, so it goes. */
function keep() {
  part('result').hidden = true;
  localStorage.setItem(KEPT, JSON.stringify(state));
  part('invented').hidden = !state.invented;
}

const say = (text) => {
  part('status').textContent = text;
};

/** Reads the form and marks what is wrong. Answers how many problems there are, and the first control that has one. */
async function checkDay() {
  const { day, controls } = readForm(form);
  state.day = day;
  keep();
  const problems = await problemsOf(day);
  return { count: problems.length, first: showProblems(problems, { form, controls, elsewhere: part('elsewhere') }) };
}

let asked = 0;

/**
 * Checks the day as typed and shows its ways; with a problem there are none to show. An answer that comes after a newer
 * question is passed over.
 */
async function showWays() {
  const mine = ++asked;
  const checked = await checkDay();
  const { lots, kitchen } = state.day;
  const found = checked.count === 0 ? await call('waysToKeep', { lots, kitchen }) : { basis: [], cautions: [] };
  if (mine !== asked) return checked;
  const { ways = [], left = [] } = found;
  const show = (way) =>
    wayItem(way, {
      elevation: kitchen.elevation,
      chosen: state.chosen[way.recipe],
      choose(picked) {
        state.chosen[way.recipe] = picked;
        keep();
      },
    });
  const lacking = ways.filter((way) => way.lacking.length > 0);
  const open = ways.filter((way) => way.lacking.length === 0);
  const closed = found.reason ? [{ name: 'Nothing is open', reason: found.reason }] : left;
  part('ways').replaceChildren(...open.map(show));
  part('lacking').replaceChildren(...lacking.map(show));
  part('lacking-part').hidden = lacking.length === 0;
  part('refusals').replaceChildren(...refusals('Not open, and why', closed));
  part('ways-behind').replaceChildren(...(ways.length === 0 ? [] : await behind(found)));
  say(
    checked.count > 0
      ? `${checked.count === 1 ? 'One field needs' : `${checked.count} fields need`} a change first.`
      : `Ways to keep it: open ${open.length}, lacking something ${lacking.length}, closed ${closed.length}.`,
  );
  return checked;
}

/** The recipes that are checked on the page, as products of the plan. None: the plan chooses. */
function products() {
  const boxes = [...form.querySelectorAll('.cards input:checked')];
  const chosen = boxes.map(({ value: recipe }) => {
    const parts = Object.entries(state.chosen[recipe] ?? {}).filter(([, value]) => value !== '');
    return { recipe, ...Object.fromEntries(parts) };
  });
  return chosen.length === 0 ? {} : { products: chosen };
}

async function plan() {
  const { count, first } = await showWays();
  if (count > 0) {
    first?.focus();
    return;
  }
  say('Planning the day. This can take a few seconds.');
  const mine = asked;
  const answer = await call('planDay', { ...state.day, ...products(), invented: state.invented });
  // somebody typed on in the meantime: this is no longer the plan of what is on the page
  if (mine !== asked) return;
  await showPlan(answer);
  say(answer.feasible ? 'The day is planned; the run sheet is below.' : 'There is no such day; the reason is below.');
  part('planned').focus();
}

/** Runs what takes time; what goes wrong is said and not lost. */
const run = (work) => work().catch((error) => say(error.message));

/** Lists what a select may hold, and keeps what it holds. */
async function fillSelect(select) {
  const now = select.value;
  const choices = await choicesFor(select.dataset.choices, {});
  select.replaceChildren(...choices.map((choice) => new Option(choice.replaceAll('-', ' '), choice)));
  select.value = now || choices[0];
}
const fillSelects = (within) => Promise.all([...within.querySelectorAll('select[data-choices]')].map(fillSelect));

async function start() {
  fillForm(form, state.day);
  keep();
  const foods = await call('foods', {});
  part('foods').replaceChildren(...foods.map(({ food }) => element('option', { value: food })));
  await fillSelects(form);
  await showWays();
}

form.addEventListener('submit', (event) => {
  event.preventDefault();
  run(plan);
});
form.addEventListener('reset', (event) => {
  event.preventDefault();
  Object.assign(state, { day: inventedDay, chosen: {}, invented: true });
  run(start);
});
form.addEventListener('change', ({ target }) => {
  if (!('field' in target.dataset)) return;
  state.invented = false;
  run(showWays);
});
form.addEventListener('click', ({ target }) => {
  if ('add' in target.dataset) {
    const row = addRow(form.querySelector(`[data-list="${target.dataset.add}"]`));
    run(() => fillSelects(row));
    row.querySelector('[data-field]').focus();
  }
  if ('remove' in target.dataset) {
    const row = target.closest('[data-row], .row');
    const after = row.parentElement.nextElementSibling;
    removeRow(row);
    after.focus();
    state.invented = false;
    run(showWays);
  }
});

run(start);
