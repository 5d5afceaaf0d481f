// A part of the screen as points, four bytes each, row by row, and how many of them are a CSS pixel.

export async function pointsOf(page, locator) {
  const picture = (await locator.screenshot()).toString('base64');
  return page.evaluate(async (data) => {
    const image = new Image();
    image.src = `data:image/png;base64,${data}`;
    await image.decode();
    const { width, height } = image;
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [width, height];
    const context = canvas.getContext('2d');
    context.drawImage(image, 0, 0);
    return { width, height, points: [...context.getImageData(0, 0, width, height).data], ratio: devicePixelRatio };
  }, picture);
}
