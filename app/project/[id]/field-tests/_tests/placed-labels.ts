import type { Spot } from "./field-drawing";

type Box = Readonly<{ left: number; right: number; top: number; bottom: number }>;

const boxAround = ({ x, y }: Spot, width: number, height: number): Box => ({
  left: x - width / 2,
  right: x + width / 2,
  top: y - height / 2,
  bottom: y + height / 2,
});
const meet = (one: Box, other: Box): boolean =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;

/**
 * A place for the words of each mark: below, above or beside it, where they cover neither a mark nor other words and
 * stay inside the drawing. Null where there is none; then the table alone has them.
 * @returns middles of the words, in the order of the marks
 */
export function placedLabels(
  marks: readonly Readonly<{ at: Spot; width: number }>[],
  {
    radius,
    height,
    room,
  }: Readonly<{ radius: number; height: number; room: Readonly<{ width: number; height: number }> }>,
): readonly (Spot | null)[] {
  const taken = marks.map(({ at }) => boxAround(at, 2 * radius, 2 * radius));
  return marks.map(({ at, width }, index) => {
    const [beside, over] = [radius + 3 + width / 2, radius + 1 + height / 2];
    const tried: readonly Spot[] = [
      { x: at.x, y: at.y + over },
      { x: at.x, y: at.y - over },
      { x: at.x + beside, y: at.y },
      { x: at.x - beside, y: at.y },
      { x: at.x + beside, y: at.y + over },
      { x: at.x - beside, y: at.y + over },
      { x: at.x + beside, y: at.y - over },
      { x: at.x - beside, y: at.y - over },
    ];
    const found = tried.find((middle) => {
      const box = boxAround(middle, width, height);
      const inside = box.left >= 0 && box.right <= room.width && box.top >= 0 && box.bottom <= room.height;
      return inside && !taken.some((other, place) => place !== index && meet(box, other));
    });
    if (found === undefined) return null;
    taken.push(boxAround(found, width, height));
    return found;
  });
}
