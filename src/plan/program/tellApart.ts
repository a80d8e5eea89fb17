import { isMaking, type Made } from '../makes/making';
import type { Wanted } from '../request/planInput';

/** What a product that could not be made was to be called. */
function plainName({ name, recipe, make, own, from }: Wanted): string {
  if (name !== undefined || own !== undefined) return name ?? (own?.name as string);
  const foods = (from ?? []).map((food) => food.name).join(' and ');
  return `${foods} ${recipe?.name ?? make?.word ?? ''}`.trim();
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
  const written = ({ recipe, pack, syrup, method, size, thickness }: Wanted): (string | undefined)[] => [
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
