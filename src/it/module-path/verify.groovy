def text = { new File(basedir, it).getText('UTF-8').replace('\r\n', '\n') }
assert text('target/output.txt') == text('expected.txt')
assert text('target/output-linked.txt') == text('expected.txt')
// The limit that docs/compatibility.md states; if it is gone, the page must say so.
assert text('target/jlink.txt').contains('automatic module cannot be used with jlink')
