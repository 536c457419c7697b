/** A carrier with four joints: channel in lines 9 to 15, ends 16 to 22, handle 23 to 28, joints 30 to 33. */
export const CARRIER = `units: mm
stock:
  material: mild-steel
  thickness: 1.0
bending:
  rule: k-factor
  k: 0.42
parts:
  - name: body
    family: hemmed-channel
    length: 320
    width: 160
    height: 50
    hem: { type: closed, length: 12 }
    endTabs: { length: 20 }
  - name: end
    family: gusset-end
    quantity: 2
    width: { of: body.seatWidth, less: 0.4 }
    shoulderHeight: 48
    height: 140
    crownWidth: 60
  - name: handle
    family: handle
    span: { of: body.insideLength, less: 2.2 }
    width: 40
    sideDepth: 14
    tabs: { length: 28 }
joints:
  - { name: west, from: body.west, to: end-1.rim, by: spot-weld }
  - { name: east, from: body.east, to: end-2.rim, by: spot-weld }
  - { name: grip-west, from: end-1.crown, to: handle.west, by: spot-weld }
  - { name: grip-east, from: end-2.crown, to: handle.east, by: spot-weld }
`;

type Change = readonly [from: string, to: string];

/** The carrier with some of its text replaced. @throws Error when the text is not there */
export function carrierJob(...changes: readonly Change[]): string {
  return changes.reduce((text, [from, to]) => {
    if (!text.includes(from)) throw new Error(`"${from}" is not in the job`);
    return text.replace(from, () => to);
  }, CARRIER);
}

/** The carrier with sizes measured on it; the first key stands in line 35, column 3. */
export const measuredJob = (line: string, ...changes: readonly Change[]): string =>
  `${carrierJob(...changes)}measured:\n  ${line}\n`;
