/** A length in mm in, the same length as it is painted out: to a hundredth of a millimetre, far below a printer's dot. */

const PER_MM = 100;

export function roundMm(mm: number): number {
  const rounded = Math.round(mm * PER_MM) / PER_MM;
  return rounded === 0 ? 0 : rounded;
}

/** The four turning numbers of a transform: a thousandth of a symbol a few millimetres long is below a hundredth. */
export function roundFactor(factor: number): number {
  const rounded = Math.round(factor * 1000) / 1000;
  return rounded === 0 ? 0 : rounded;
}
