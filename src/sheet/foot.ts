import { ruleFigures } from '../process/canningRules';
import { letter } from './clock';
import { many, type Pen } from './pen';
import { offTrays } from './rows';
import type { Line } from './sheet';
import { say } from './words';

/** Four numbers that make the next plan better, and what tomorrow brings. */
export function footOf(pen: Pen): Line[] {
  const { products } = pen.plan;
  const unit = pen.measure.massUnit;
  const jars = products.some((product) => product.canning !== undefined);
  const dryer = products.some(({ drying: trays }) => trays?.where === 'dryer');
  const blanks = (some: (product: (typeof products)[number]) => boolean) =>
    products
      .flatMap((product, index) => (some(product) ? [say('write.each', { letter: letter(index) })] : []))
      .join(' ');
  const write = [
    say('write.ready', { unit, blanks: blanks(() => true) }),
    jars
      ? say('write.jars', { blanks: blanks(({ canning }) => canning !== undefined) })
      : say('write.packs', { blanks: blanks(() => true) }),
    say('write.minutes'),
    dryer ? say('write.dryer') : jars ? say('write.boil') : say('write.left', { unit }),
  ];
  const later = laterOf(pen);
  const { low, high } = ruleFigures('cool-jars');
  const cooled = say('range', { from: low / 60, to: high / 60 });
  const sealed = jars
    ? [say('tomorrow.cool', { hours: cooled }), say('tomorrow.press'), say('tomorrow.wipe')]
    : later.length === 0
      ? [say('tomorrow.nothing')]
      : [];
  return [
    { label: say('foot.write'), text: write.join(say('dot')) },
    { label: say('foot.tomorrow'), text: [...sealed, ...later].map((text) => `${say('box')} ${text}`).join('  ') },
  ];
}

/** What is done after the last hours of work: every load of trays that no row takes off, the freezer, the crocks. */
function laterOf({ plan, clock }: Pen): string[] {
  const { tasks } = plan.schedule;
  const left = offTrays(plan).filter(({ at }) => at === undefined);
  return plan.products.flatMap(({ name }, index) => {
    const of = letter(index);
    const own = tasks.filter(({ forProducts: names }) => names.includes(name));
    const frozen = own.filter(({ kind }) => kind === 'freeze').map(({ endMinute: end }) => end);
    return [
      ...left
        .filter(({ task }) => task.forProducts.includes(name))
        .map(({ task: { kind, endMinute: end, units } }) =>
          say(kind === 'dry' ? 'tomorrow.dry' : 'tomorrow.freeze-dry', {
            letter: of,
            time: clock.when(end, 0),
            count: many(units?.count ?? 1, 'tray'),
          }),
        ),
      ...(frozen.length > 0 ? [say('tomorrow.freeze', { letter: of, time: clock.when(Math.max(...frozen), 0) })] : []),
      ...(own.some(({ kind }) => kind === 'ferment') ? [say('tomorrow.ferment', { letter: of })] : []),
    ];
  });
}
