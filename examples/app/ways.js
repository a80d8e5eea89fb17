/** The ways to keep the harvest as a list: what each gives, takes and lacks, and why others are closed. */
import { convert, formatQuantity } from '../../dist/quantity/index.js';
import { element } from './element.js';
import { call, processChoices } from './library.js';

const range = ({ low, high }, say = String) => [...new Set([say(low), say(high)])].join(' to ');
const many = ({ jar, low, high }) => `${range({ low, high })} ${jar}${high === 1 ? '' : 's'}`;
const plain = (word) => word.replaceAll('-', ' ');
const hours = ({ value, unit }) =>
  formatQuantity(unit === 'min' && value >= 90 ? { value: Math.ceil(value / 30) / 2, unit: 'h' } : { value, unit });

/** Whole months of 30 days, rounded down. */
const months = (time) => Math.floor(convert(time, 'day').value / 30);

/** A line of facts; without a fact there is no line. */
const line = (label, text = '') => (text === '' ? '' : element('p', {}, element('b', {}, `${label}: `), text));

const yieldsOf = ({ yields, mass }) =>
  mass ? range(mass, (each) => formatQuantity(each)) : yields.map(many).join(', or ');

const heat = ({ processes }) => {
  const minutes = processes.map((each) => each.minutes);
  const [low, high] = [Math.min(...minutes), Math.max(...minutes)];
  if (minutes.length === 0) return '';
  return low === high ? `${low} min` : `${low} to ${high} min, by canner, pack and jar`;
};

const keeping = ({ keeps }) =>
  keeps
    .map(({ place, low, high }) => (low === undefined ? place : `${place}, ${range({ low, high }, months)} months`))
    .join('; ');

const takes = ({ needs }) =>
  needs
    .map(({ what, amount, neverLess }) => {
      const much = amount === undefined ? '' : ` (${formatQuantity(amount)} to each batch)`;
      return `${what}${much}${neverLess ? ', never less' : ''}`;
    })
    .join('; ');

/** One choice for each thing that a tested process depends on, each within what the choices before it leave open. */
const PARTS = [
  ['method', 'Canner'],
  ['pack', 'Pack'],
  ['jar', 'Jar'],
];

/** Selects for canner, pack and jar. `choose` hears what is chosen. */
function processSelects(way, { elevation, chosen, choose }) {
  const asked = { food: way.foods[0], recipe: way.recipe, elevation };
  const process = element('p', { className: 'process' });
  const selects = PARTS.map(([part, label]) => [part, element('select', {}), label]);

  async function refresh() {
    const given = { ...asked };
    for (const [part, select] of selects) {
      const open = await processChoices(part, given);
      const here = open.filter((choice) => way.processes.some((each) => each[part] === choice));
      select.replaceChildren(
        new Option('any that fits', ''),
        ...here.map((choice) => new Option(plain(choice), choice)),
      );
      select.value = here.includes(chosen[part]) ? chosen[part] : '';
      if (select.value === '') delete chosen[part];
      else given[part] = select.value;
    }
    process.textContent = PARTS.every(([part]) => chosen[part]) ? await processWords(given) : '';
  }
  for (const [part, select] of selects) {
    select.onchange = async () => {
      chosen[part] = select.value;
      await refresh();
      choose(chosen);
    };
  }
  refresh();
  const labels = selects.map(([, select, label]) => element('label', {}, `${label} `, select));
  return element('div', {}, element('div', { className: 'fields' }, ...labels), process);
}

async function processWords(given) {
  const answer = await call('testedProcess', given);
  if (!answer.tested) return answer.reason.text;
  const pressure = answer.pressure ? ` at ${formatQuantity(answer.pressure)}` : '';
  return `The tested process here: ${answer.minutes} min${pressure}, headspace ${formatQuantity(answer.headspace)}.`;
}

/** A way with its check box. `chosen` is what was chosen of its process before, if anything. */
export function wayItem(way, { elevation, chosen, choose }) {
  const box = element('input', { type: 'checkbox', value: way.recipe, checked: chosen !== undefined });
  const item = element(
    'li',
    {},
    element('label', { className: 'check' }, box, element('strong', {}, way.name)),
    line('Gives', yieldsOf(way)),
    line('Your work', way.handsOn && range(way.handsOn, hours)),
    line('Heat here', heat(way)),
    line('Keeps', keeping(way)),
    line('What else may go in', takes(way)),
    line('Never change', way.mustKeep.join('; ')),
    line('You lack', way.lacking.map(({ text }) => text).join('; ')),
  );
  if (way.lacking.length > 0) item.className = 'lacking';
  const more = element('div', {});
  item.append(more);

  function show(picked) {
    const canned = picked !== undefined && way.processes.length > 0;
    more.replaceChildren(...(canned ? [processSelects(way, { elevation, chosen: picked, choose })] : []));
  }
  box.onchange = () => {
    const picked = box.checked ? {} : undefined;
    choose(picked);
    show(picked);
  };
  show(chosen);
  return item;
}

/** What is closed, each with its reason and what to do instead. */
export function refusals(heading, closed) {
  if (closed.length === 0) return [];
  const items = closed.map(({ name, reason, instead = [] }) => {
    const rather = instead.map(({ text }) => text).join('; ');
    return element('li', {}, element('b', {}, `${name}: `), `${reason.text}.`, rather && ` Instead: ${rather}.`);
  });
  return [element('h3', {}, heading), element('ul', {}, ...items)];
}

/** The cautions, dangers first as they come, and the documents that the figures are from. */
export async function behind({ cautions, basis }) {
  const ids = [...new Set(basis.flatMap(({ source }) => source ?? []))];
  const sources = ids.length === 0 ? [] : await call('sources', { ids });
  const recalled = basis.filter(({ kind }) => kind === 'recalled').length;
  return [
    element('h3', {}, 'Mind this'),
    element('ul', {}, ...cautions.map(({ text, severity }) => element('li', { className: severity }, text))),
    element(
      'details',
      {},
      element('summary', {}, `Where the figures come from: ${ids.length} documents`),
      element('ul', {}, ...sources.map(sourceItem)),
      recalled > 0 ? element('p', {}, `${recalled} figures are recalled: look them up before you rely on them.`) : '',
    ),
  ];
}

function sourceItem({ title, publisher, year, url }) {
  const text = `${title}, ${publisher}${year === undefined ? '' : `, ${year}`}`;
  return element('li', {}, url === undefined ? text : element('a', { href: url }, text));
}
