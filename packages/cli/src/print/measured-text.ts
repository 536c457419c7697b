/** What a file of measured strips is started with. Sizes as they are written, in the unit. */
export interface MeasuredStart {
  readonly units: string;
  readonly material: string;
  readonly thickness: string;
  readonly insideRadius: string;
  readonly between: string;
  readonly width: string;
  readonly count: number;
}

/** A file of measured strips to fill in: a zero stands for what has to be measured. */
export function measuredText({
  units,
  material,
  thickness,
  insideRadius,
  between,
  width,
  count,
}: MeasuredStart): string {
  const strip = `  - { flat: ${between}, legs: [0, 0], angle: 0, set: 0, width: ${width} }`;
  return `# Bent strips as measured. tinwright strip fit --measured THIS-FILE --shop SHOP-FILE
# Put what you measured in the place of every zero; take out what you did not measure (set, width).
units: ${units}
material: ${material}
thickness: ${thickness}  # measured on the sheet
insideRadius: ${insideRadius}  # as jobs will say it
# reading: { length: 0.1 mm, angle: 0.5 }  # what one reading may be off: one standard error
strips:
# flat: between the witness lines before bending, or the whole strip
# legs: outside, from where the outside faces would meet to those lines or ends; over 90 degrees from the outside of the bend
# angle: what is left, bent through from flat; set: what the leaf or punch was set to; width: along the bend
${`${strip}\n`.repeat(count)}`;
}
