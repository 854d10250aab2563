import { type Figure, known, type Working, type WorkingInput } from "#lib/figure";
import { type ExactQuantity, formatValue, type In, measured } from "#lib/quantity";
import type { FieldShape, PolygonByCoordinates, PolygonBySides, SportField } from "./model";
import { shoelaceArea } from "./polygon";
import { sportFields } from "./sport-fields";
import { fanTriangles, triangleArea } from "./triangle-fan";

type Area = Readonly<{ value: In<"m²">; working: Working }>;

const fromBrief = (label: string, text: string, field: string): WorkingInput => ({
  label,
  text,
  from: { kind: "brief", field: `field.${field}` },
});

const bothUnits = (squareMetres: number) => {
  const area = measured("area", squareMetres);
  return `${formatValue("area", area, "us")} (${formatValue("area", area, "metric")})`;
};

function rectangleArea(length: ExactQuantity<"distance">, width: ExactQuantity<"distance">): Area {
  return {
    value: measured("area", length.value * width.value),
    working: {
      formula: "area = length × width",
      inputs: [fromBrief("length", length.asEntered, "length"), fromBrief("width", width.asEntered, "width")],
      assumptions: ["The field is a rectangle with square corners."],
      source: "derived from the definition of area",
    },
  };
}

function sportArea({ sport, runOff }: SportField): Area {
  const { label, length, width, size, source, status, note } = sportFields[sport];
  return {
    value: measured("area", (length + 2 * runOff.value) * (width + 2 * runOff.value)),
    working: {
      formula: "area = (length + 2 × run-off) × (width + 2 × run-off)",
      inputs: [fromBrief(label, size, "sport"), fromBrief("run-off on every side", runOff.asEntered, "runOff")],
      assumptions: [
        "The run-off is the same on all four sides.",
        note,
        ...(status === "from-memory" ? ["The size is noted from memory: check it against the rule book."] : []),
      ],
      source,
    },
  };
}

function coordinatesArea({ unit, corners }: PolygonByCoordinates): Area {
  return {
    value: measured("area", shoelaceArea(corners)),
    working: {
      formula: "area = ½ · |Σ (x of a corner × y of the next − x of the next × y of the corner)|, around the outline",
      inputs: corners.map(({ asEntered }, index) =>
        fromBrief(`corner ${index + 1}, x and y`, `${asEntered} ${unit}`, `corners.${index}`),
      ),
      assumptions: ["Sides are straight and the corners are listed in order around the outline."],
      source: "derived: shoelace formula",
    },
  };
}

function sidesArea(shape: PolygonBySides): Area {
  const triangles = fanTriangles(shape).map(({ corners, sides: [one, two, three] }) => ({
    corners,
    area: triangleArea([one.length, two.length, three.length]),
  }));
  const input = (name: string, list: string) => (quantity: ExactQuantity<"distance">, index: number) =>
    fromBrief(`${name} ${index + 1}`, quantity.asEntered, `${list}.${index}`);
  return {
    value: measured(
      "area",
      triangles.reduce((sum, { area }) => sum + area, 0),
    ),
    working: {
      formula: "area = Σ √(s·(s−a)·(s−b)·(s−c)) over the triangles, s = half of a triangle's sides a + b + c",
      inputs: [
        ...shape.sides.map(input("side", "sides")),
        ...shape.diagonals.map(input("diagonal", "diagonals")),
        ...triangles.map(
          ({ corners, area }): WorkingInput => ({
            label: `triangle of corners ${corners}`,
            text: bothUnits(area),
            from: { kind: "figure", figure: "field-area" },
          }),
        ),
      ],
      assumptions: ["All diagonals start at corner 1 and run inside the field; sides are straight."],
      source: "derived: Heron's formula, arranged so that narrow triangles keep their digits",
    },
  };
}

function areaOf(shape: FieldShape): Area {
  switch (shape.kind) {
    case "rectangle":
      return rectangleArea(shape.length, shape.width);
    case "sport":
      return sportArea(shape);
    case "polygon-by-coordinates":
      return coordinatesArea(shape);
    case "polygon-by-sides":
      return sidesArea(shape);
    case "measured-area":
      return {
        value: shape.area.value,
        working: {
          formula: "area as measured",
          inputs: [fromBrief("area", shape.area.asEntered, "area")],
          assumptions: [],
          source: shape.how,
        },
      };
  }
}

/** The turfed area in m² with how it was found. */
export function fieldArea(shape: FieldShape): Figure<"area"> {
  const { value, working } = areaOf(shape);
  return known("area", value, working);
}
