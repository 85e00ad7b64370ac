import { columnUnit } from "./columnUnit.ts";
import type { Judged } from "./judgedColumn.ts";
import { celsiusFrom, type LogUnit, possibleUnits } from "./unit.ts";

/** Change of a kiln, or lead of it, beside which a column near room temperature is none of its zones [in its unit]. */
const KILN_RANGE = 60;
/** Change of a kiln that is enough when it is so many times that of the column. */
const MUCH_MORE = { range: 30, times: 10 };

/** Whether a column without a name stays near room temperature while a kiln beside it moves. */
export function isIndoors({ shape, column, role }: Judged, all: readonly Judged[]): boolean {
  if (role !== "temperature" || !/^column \d+$/.test(column.name)) return false;
  const unit = columnUnit(column);
  const others = all.filter((other) => other.column !== column && other.role === "temperature");
  const units = unit === null ? unitsOf(others) : [unit];
  const isNear = units.some((each) => {
    const least = celsiusFrom(shape.least, each);
    const most = celsiusFrom(shape.greatest, each);
    return least > 5 && most < 60 && most - least < 25;
  });
  const own = MUCH_MORE.times * (shape.greatest - shape.least);
  const isKiln = (other: Judged) =>
    other.role === "temperature" &&
    (other.shape.greatest - other.shape.least >
      Math.min(KILN_RANGE, Math.max(MUCH_MORE.range, own)) ||
      other.shape.least - shape.greatest > KILN_RANGE);
  return isNear && others.some(isKiln);
}

/** Scales under which all of some columns could be kilns. */
function unitsOf(columns: readonly Judged[]): readonly LogUnit[] {
  return (["C", "F", "K"] as const).filter((unit) =>
    columns.every(({ shape: { first, least, greatest } }) =>
      possibleUnits({ start: first, least, peak: greatest }).includes(unit),
    ),
  );
}

export function asIndoors(judged: Judged): Judged {
  const because = "it stays near room temperature while another column does not";
  return { ...judged, role: "cold-junction", because, isSure: false };
}
