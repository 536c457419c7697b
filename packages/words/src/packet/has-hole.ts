/** True for fasteners that go through a hole in both sheets. */
export const hasHole = (fastener: string): boolean => fastener === 'blind-rivet' || fastener === 'screw';
