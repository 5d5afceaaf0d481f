"""What is printed, as a scanner sees it.

    python tests/outside/printed.py FOLDER

`tests/outside/printed.mjs` puts PDF files of the job sheets and the reports into the folder. Each page is rendered at
150 dots to the inch and its code read by two decoders that know nothing of the page; the job sheet must be one page. The
pictures stay beside the files, to be looked at.
"""

import json
import pathlib
import sys

import cv2
import numpy as np
import pypdfium2
import zxingcpp

DPI = 150


def check(condition, *what):
    if not condition:
        raise SystemExit(f"differs: {what}")


def pages(path):
    document = pypdfium2.PdfDocument(path)
    return [page.render(scale=DPI / 72, grayscale=True).to_numpy() for page in document]


def flat(image):
    return np.ascontiguousarray(image[..., 0] if image.ndim == 3 else image)


def seen(image):
    """The same as a tired scanner gives it: turned by a degree, blurred, grey, with noise."""
    high, wide = image.shape
    turn = cv2.getRotationMatrix2D((wide / 2, high / 2), 1.0, 1.0)
    worse = cv2.warpAffine(image, turn, (wide, high), flags=cv2.INTER_AREA, borderValue=255)
    worse = cv2.GaussianBlur(worse, (0, 0), 0.7).astype(float)
    noise = np.random.default_rng(1).normal(0, 8, worse.shape)
    return (worse * 0.75 + 40 + noise).clip(0, 255).astype(np.uint8)


def main():
    folder = pathlib.Path(sys.argv[1])
    files = sorted(folder.glob("*.pdf"))
    check(files, "no files in", folder)
    by_second = 0
    codes = 0
    print(f"{'file':22} {'pages':>5}  code read by")
    for path in files:
        images = [flat(page) for page in pages(path)]
        for number, image in enumerate(images, 1):
            cv2.imwrite(str(path.with_suffix(f".{number}.png")), image)
        readers = []
        if path.stem.startswith("sheet"):
            check(len(images) == 1, path.name, "pages", len(images))
            wanted = json.loads((folder / f"{path.stem.rsplit('-', 1)[0]}.json").read_text())["address"]
            codes += 1
            found = zxingcpp.read_barcodes(images[0])
            check(len(found) == 1 and found[0].text == wanted, path.name, "zxing-cpp", [it.text for it in found])
            readers.append("zxing-cpp")
            text, _, _ = cv2.QRCodeDetector().detectAndDecode(images[0])
            check(text in ("", wanted), path.name, "opencv", text)
            if text:
                readers.append("opencv")
                by_second += 1
            found = zxingcpp.read_barcodes(seen(images[0]))
            if len(found) == 1 and found[0].text == wanted:
                readers.append("as a tired scanner sees it")
        else:
            check(len(images) <= 3, path.name, "pages", len(images))
        print(f"{path.name:22} {len(images):5}  {', '.join(readers)}")
    print(f"{codes} codes, all read by zxing-cpp at {DPI} dpi, {by_second} by OpenCV")


main()
