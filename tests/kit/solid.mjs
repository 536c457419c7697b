// A formed part as one solid of manifold-3d: panels as extrusions, bends as flat strips. Library first.
const STEPS = 12;

const matrix = ({ x, y, z, origin }) => [...x, 0, ...y, 0, ...z, 0, ...origin, 1];

/** @param wasm manifold-3d, set up  @param formed a formed part of the core */
export function solidOf({ CrossSection, Manifold }, { panels, bends, thickness }) {
  const plates = panels.map(({ shape, holes, pose }) => {
    const outline = new CrossSection([shape.map((p) => [...p])]);
    const cut = holes.reduce(
      (rest, h) => rest.subtract(CrossSection.circle(h.diameter / 2, 48).translate(...h.at)),
      outline,
    );
    return Manifold.extrude(cut, thickness).transform(matrix(pose));
  });
  const rings = bends.flatMap((b) =>
    Array.from({ length: STEPS }, (_, i) => {
      const corner = (k, r, [from, to]) => {
        const phi = (b.sweep * k) / STEPS;
        return [from + ((to - from) * k) / STEPS, r * Math.cos(phi), r * Math.sin(phi)];
      };
      const points = [i, i + 1].flatMap((k) =>
        [b.insideRadius, b.outsideRadius].flatMap((r) => [corner(k, r, b.low), corner(k, r, b.high)]),
      );
      return Manifold.hull(points).transform(matrix(b.frame));
    }),
  );
  return Manifold.union([...plates, ...rings]);
}
