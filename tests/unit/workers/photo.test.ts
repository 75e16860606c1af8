import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { bareJpeg, isBareJpeg, jpegOf, jpegSize } from "../../../src/workers/photo/jpeg.ts";
import { lookAt } from "../../../src/workers/photo/look.ts";
import fc from "../../chance.ts";
import { heic, hugePng, pngOf } from "./odd-photos.ts";

// The photos are Pillow's, with EXIF, GPS, XMP and a comment in each (fixtures/photos/make.py).
const fixture = (name: string) => new Uint8Array(readFileSync(`fixtures/photos/${name}`));
const jpeg = fixture("place.jpg");

describe("a JPEG of another program", () => {
  it("is taken apart: its size, as it is stored, and where EXIF and the comment stand", () => {
    const parts = jpegOf(jpeg);
    expect(parts && jpegSize(parts)).toEqual([480, 360]);
    expect(parts?.segments.map(({ marker }) => marker)).toEqual(expect.arrayContaining([0xe1, 0xfe, 0xda]));
    expect(parts?.after).toBe(0);
  });

  it("is not bare, and is once all but the picture is taken out", () => {
    expect(isBareJpeg(jpeg)).toBe(false);
    const bare = bareJpeg(jpeg) ?? new Uint8Array();
    expect(isBareJpeg(bare)).toBe(true);
    expect(Buffer.from(bare).toString("latin1")).not.toMatch(/Exif|xmp|taken at home|A camera/);
    const size = jpegOf(bare);
    expect(size && jpegSize(size)).toEqual([480, 360]);
  });

  // ITU-T T.81, table B.1: what a segment is, by its marker
  it.each([
    ["EXIF or XMP", 0xe1, "Exif\0\0…"],
    ["a colour profile", 0xe2, "ICC_PROFILE\0…"],
    ["IPTC", 0xed, "Photoshop 3.0\0…"],
    ["a comment", 0xfe, "taken at home"],
    ["a JFIF thumbnail", 0xe0, "JFIF\0\x01\x01\0\0\x01\0\x01\x01\x01abc"],
    ["another program's own", 0xe5, "x"],
  ])("is not bare with %s in it", (_, marker, text) => {
    const bare = bareJpeg(jpeg) ?? new Uint8Array();
    const body = Buffer.from(text, "latin1");
    const segment = [0xff, marker, 0, body.length + 2, ...body];
    expect(isBareJpeg(new Uint8Array([...bare.slice(0, 2), ...segment, ...bare.slice(2)]))).toBe(false);
  });

  it("is not bare with anything behind its end", () => {
    expect(isBareJpeg(new Uint8Array([...(bareJpeg(jpeg) ?? []), 0]))).toBe(false);
  });

  it("is damaged wherever it is cut", () => {
    for (let length = 3; length < jpeg.length; length += 97)
      expect(lookAt(jpeg.slice(0, length))).toBe("damaged");
  });
});

describe("a file that is to be a photo", () => {
  it.each([
    ["a JPEG", jpeg, null],
    ["a PNG", fixture("place.png"), null],
    ["a WebP", fixture("place.webp"), null],
    ["nothing", new Uint8Array(), "empty"],
    ["text", new TextEncoder().encode("a note, long enough to hold a head"), "not-a-photo"],
    ["a drawing", new TextEncoder().encode("<svg xmlns='http://www.w3.org/2000/svg'/>"), "not-a-photo"],
    ["a film", new TextEncoder().encode("\0\0\0\x18ftypmp42\0\0\0\0isom"), "not-a-photo"],
    ["a HEIC picture, which some browsers read", heic, null],
    ["a camera's own file", new TextEncoder().encode("II*\0 and so on and on"), "unreadable-kind"],
    ["a PNG of 2,500 million pixels", hugePng, "too-many-pixels"],
    ["a PNG of as many as are taken", pngOf(8_000, 6_500), null],
    ["a PNG of one row more", pngOf(8_000, 6_501), "too-many-pixels"],
    ["a PNG without an end", hugePng.slice(0, -12), "damaged"],
    ["a PNG of no height", pngOf(8_000, 0), "damaged"],
    ["a WebP that is cut", fixture("place.webp").slice(0, 900), "damaged"],
    ["a GIF's start alone", new TextEncoder().encode("GIF89a"), "damaged"],
  ])("%s: %s", (_, bytes, looked) => expect(lookAt(bytes)).toBe(looked));

  it("is looked at whatever it holds", () => {
    const starts = [jpeg.slice(0, 3), hugePng.slice(0, 8), Buffer.from("RIFF0000WEBP"), heic.slice(0, 12)];
    fc.assert(
      fc.property(fc.constantFrom(...starts), fc.uint8Array({ maxLength: 400 }), (start, rest) => {
        const bytes = new Uint8Array([...start, ...rest]);
        lookAt(bytes);
        expect(isBareJpeg(bytes)).toBe(false);
      }),
    );
  });
});
