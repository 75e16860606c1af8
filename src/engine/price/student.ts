/** How close the quantile is searched, in halvings of the angle: past the last bit of a double. */
const halvings = 60;

/**
 * P(|T| ≤ √n · tan θ) for Student's t with n whole degrees of freedom: a finite sum.
 * @see Abramowitz & Stegun (1964), Handbook of Mathematical Functions, 26.7.3 (odd n) and 26.7.4 (even n)
 */
function shareWithin(theta: number, freedom: number): number {
  const [sin, cos] = [Math.sin(theta), Math.cos(theta)];
  const odd = freedom % 2 === 1;
  let sum = 0;
  let term = odd ? cos : 1;
  for (let power = odd ? 1 : 0; power <= freedom - 2; power += 2) {
    sum += term;
    term *= ((power + 1) / (power + 2)) * cos * cos;
  }
  return odd ? (2 / Math.PI) * (theta + sin * sum) : sin * sum;
}

/**
 * The t within which Student's distribution keeps `share` of its weight, both sides together.
 * @param share above 0 and below 1: 0.8 leaves a tenth on either side
 * @param freedom whole degrees of freedom, 1 or more
 * @returns 1.8856 for 0.8 and two degrees of freedom
 */
export function studentWithin(share: number, freedom: number): number {
  let [low, high] = [0, Math.PI / 2];
  for (let step = 0; step < halvings; step += 1) {
    const middle = (low + high) / 2;
    if (shareWithin(middle, freedom) < share) low = middle;
    else high = middle;
  }
  return Math.sqrt(freedom) * Math.tan((low + high) / 2);
}
