/** Where the terminals of the drawn box stand, as shares of its width and height. */
export const terminals = Array.from({ length: 10 }, (_, i) => ({ x: 0.14 + 0.08 * i, y: 0.5 }));

const width = 1200;
const height = 700;

const terminal = ({ x, y }, i) => `
  <path d="M${x * width} ${y * height - 60}C${x * width} 240 ${x * width - 30} 180 ${x * width - 30} 0"
    fill="none" stroke="${i < 6 ? '#2c4f9e' : '#3b3b3b'}" stroke-width="14"/>
  <rect x="${x * width - 40}" y="${y * height - 90}" width="80" height="180" fill="#b9b7ae" stroke="#6f6d66" stroke-width="3"/>
  <circle cx="${x * width}" cy="${y * height - 48}" r="17" fill="#57554f"/>
  <circle cx="${x * width}" cy="${y * height + 48}" r="17" fill="#57554f"/>
  <rect x="${x * width - 30}" y="${y * height - 16}" width="60" height="32" fill="#f4f2ea"/>`;

/** The photograph of a terminal box, drawn: nobody has taken one of a line that is invented. */
export const drawBox = async (page) => {
  const drawing = await page.context().newPage();
  await drawing.setViewportSize({ width, height });
  await drawing.setContent(`<style>body { margin: 0 }</style>
    <svg width="${width}" height="${height}" style="display: block">
      <rect width="${width}" height="${height}" fill="#8d8a80"/>
      <rect x="30" y="30" width="${width - 60}" height="${height - 60}" fill="#a5a298" stroke="#6f6d66" stroke-width="8"/>
      <rect x="60" y="${height / 2 - 22}" width="${width - 120}" height="44" fill="#cfcdc4"/>
      ${terminals.map(terminal).join('')}
    </svg>`);
  const buffer = await drawing.screenshot();
  await drawing.close();
  return { name: 'box.png', mimeType: 'image/png', buffer };
};
