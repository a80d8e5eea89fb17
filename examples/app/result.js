/** The plan on the page: what it promises, what it leaves and why, and the run sheet to print. */
import { formatQuantity } from '../../dist/quantity/index.js';
import { element } from './element.js';
import { call } from './library.js';
import { behind, refusals } from './ways.js';

const part = (id) => document.getElementById(id);
const list = (heading, lines) =>
  lines.length === 0
    ? []
    : [element('h3', {}, heading), element('ul', {}, ...lines.map((text) => element('li', {}, text)))];

/** Promised is what you can count on, ready is what to get ready for. */
const made = ({ name, units: { promised, ready, unit, plural } }) =>
  `${name}: count on ${promised} ${promised === 1 ? unit : plural}, get ready for ${ready}`;

function feasible({ products, leftFresh, leftOut, nothingMade }) {
  const left = leftFresh.map(
    ({ lot, raw, reason }) => `${formatQuantity(raw, { rounding: 'up' })} of ${lot}: ${reason.text}`,
  );
  return [
    ...list('What you make', products.map(made)),
    ...(nothingMade ? [element('p', {}, `${nothingMade.text}.`)] : []),
    ...list('What stays fresh, and why', left),
    ...refusals('What this kitchen cannot make, and why', leftOut),
  ];
}

function infeasible({ reason, conflicts, most, leftOut }) {
  return [
    element('p', {}, `${reason.text}.`),
    ...list('What conflicts', conflicts),
    ...list(
      'The most you could ask for',
      most.map(({ name, count }) => `${name}: ${count}`),
    ),
    ...refusals('What this kitchen cannot make, and why', leftOut),
  ];
}

/** Shows a plan. Its sheet is a whole page of its own, so it stands in a frame, which prints by itself. */
export async function showPlan(plan) {
  part('result').hidden = false;
  part('summary').replaceChildren(...(plan.feasible ? feasible(plan) : infeasible(plan)));
  part('plan-behind').replaceChildren(...(await behind(plan)));
  for (const id of ['sheet', 'sheet-actions']) part(id).hidden = !plan.feasible;
  document.onkeydown = null;
  if (!plan.feasible) return;
  const html = await call('runSheet', [plan, { as: 'html', title: 'Run sheet' }]);
  const frame = part('sheet');
  frame.onload = () => {
    frame.style.height = `${frame.contentDocument.documentElement.scrollHeight + 24}px`;
  };
  frame.srcdoc = html;
  const print = () => frame.contentWindow.print();
  part('print').onclick = print;
  // a browser cuts a frame wherever a page ends; printed by itself, the sheet breaks where it should
  document.onkeydown = (event) => {
    if (event.key !== 'p' || !(event.ctrlKey || event.metaKey)) return;
    event.preventDefault();
    print();
  };
  const save = part('save');
  URL.revokeObjectURL(save.href);
  save.href = URL.createObjectURL(new Blob([html], { type: 'text/html' }));
}
