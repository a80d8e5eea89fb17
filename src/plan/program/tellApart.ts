import { nameOf } from '../makes/naming';
import type { Wanted } from '../request/planInput';

/**
 * A name for each product that no other has: where two would be called the same, the pack, syrup, canner, size and
 * so on are added, and where they still are, a number.
 */
export function tellApart(products: readonly Wanted[], trades: readonly string[]): string[] {
  const plain = products.map((wanted, index) => nameOf(wanted, trades[index]));
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
  const written = ({ make, pack, syrup, method, size, thickness }: Wanted): (string | undefined)[] => [
    make,
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
