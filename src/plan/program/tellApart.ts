import { saidOf } from '../../foods/phrases';
import { formName } from '../../foods/tables';
import { isMaking, type Made } from '../makes/making';
import { inJars, nameOf } from '../makes/naming';
import type { Wanted } from '../request/planInput';

/** What a product that could not be made was to be called. */
function plainName(wanted: Wanted): string {
  const { name, recipe, make, from = [], form, jar } = wanted;
  if (name !== undefined) return name;
  if (wanted.own !== undefined) return `${wanted.own.name}${inJars(jar)}`;
  const [food] = from;
  const shape = form === undefined ? undefined : formName(form);
  if (recipe !== undefined && food !== undefined)
    return nameOf(
      {
        wanted,
        row: recipe,
        food,
        foods: [food.id],
        lots: [],
        ...(shape === undefined ? {} : { form: shape }),
        index: 0,
      },
      jar,
    );
  const foods = from.map((each) => each.name).join(' and ');
  if (recipe !== undefined) return recipe.name;
  const { title } = saidOf(foods, shape);
  const plain = form !== undefined || make?.canned === true ? title : `${foods} ${make?.word ?? ''}`.trim();
  return `${plain}${inJars(jar)}`;
}

/**
 * A name for each product that no other has: where two would be called the same, the pack, syrup, canner, size and
 * so on are added, and where they still are, a number.
 */
export function tellApart(made: readonly Made[], products: readonly Wanted[]): string[] {
  const plain = made.map((each, index) => (isMaking(each) ? each.label : plainName(products[index] as Wanted)));
  const detailed = plain.map((name, index) => {
    const twins = products.filter((_, other) => plain[other] === name);
    if (twins.length === 1) return name;
    return [name, ...detailsOf(products[index] as Wanted, twins)].join(', ');
  });
  return detailed.map((name, index) => {
    if (detailed.filter((each) => each === name).length === 1) return name;
    return `${name} (${detailed.slice(0, index).filter((each) => each === name).length + 1})`;
  });
}

/** What sets a product apart from others of its name. */
function detailsOf(wanted: Wanted, twins: readonly Wanted[]): string[] {
  const written = ({ recipe, pack, syrup, method, packSize: size, thickness }: Wanted): (string | undefined)[] => [
    recipe?.name,
    pack && `${pack} pack`,
    syrup && `${syrup} syrup`,
    method,
    size && `${size.value} ${size.unit}`,
    thickness && `${thickness.value} ${thickness.unit}`,
  ];
  return written(wanted).filter(
    (detail, field): detail is string => detail !== undefined && twins.some((twin) => written(twin)[field] !== detail),
  );
}
