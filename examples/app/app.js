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

function keep() {
  localStorage.setItem(KEPT, JSON.stringify(state));
  part('invented').hidden = !state.invented;
}

const say = (text) => {
  part('status').textContent = text;
};

/** Reads the form, marks what is wrong, and answers the first control that has a problem. */
async function checkDay() {
  const { day, controls } = readForm(form);
  const problems = await problemsOf(day);
  state.day = day;
  keep();
  return { problems, first: showProblems(problems, { form, controls, elsewhere: part('elsewhere') }) };
}

let asked = 0;

/** Shows the ways of the day as typed. An answer that comes after a newer question is passed over. */
async function showWays() {
  const mine = ++asked;
  const { problems } = await checkDay();
  if (mine !== asked) return;
  if (problems.length > 0) {
    say(problems.length === 1 ? 'One field needs a change.' : `${problems.length} fields need a change.`);
    return;
  }
  const { lots, kitchen } = state.day;
  const found = await call('waysToKeep', { lots, kitchen });
  if (mine !== asked) return;
  const { ways = [], left = [], basis, cautions } = found;
  const choose = (recipe) => (picked) => {
    state.chosen[recipe] = picked;
    keep();
  };
  const show = (way) =>
    wayItem(way, { elevation: kitchen.elevation, chosen: state.chosen[way.recipe], choose: choose(way.recipe) });
  part('ways').replaceChildren(...ways.map(show));
  const closed = found.reason ? [{ name: 'Nothing', reason: found.reason }] : left;
  part('refusals').replaceChildren(...refusals('Not open, and why', closed));
  part('ways-behind').replaceChildren(...(await behind({ basis, cautions })));
  const open = ways.filter(({ lacking }) => lacking.length === 0).length;
  say(`${open} ways are open with what you have, ${ways.length - open} lack something, ${closed.length} are closed.`);
}

/** The recipes that are checked on the page, as products of the plan. None: the plan chooses. */
function products() {
  const boxes = [...part('ways').querySelectorAll('input:checked')];
  const chosen = boxes.map(({ value: recipe }) => {
    const parts = Object.entries(state.chosen[recipe] ?? {}).filter(([, value]) => value !== '');
    return { recipe, ...Object.fromEntries(parts) };
  });
  return chosen.length === 0 ? {} : { products: chosen };
}

async function plan() {
  const { problems, first } = await checkDay();
  if (problems.length > 0) {
    part('result').hidden = true;
    say(
      `${problems.length === 1 ? 'One field needs' : `${problems.length} fields need`} a change before the day can be planned.`,
    );
    first?.focus();
    return;
  }
  say('Planning the day. This can take some seconds.');
  const answer = await call('planDay', { ...state.day, ...products(), invented: state.invented });
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
  part('result').hidden = true;
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
