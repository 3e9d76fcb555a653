def text = { new File(basedir, it).getText('UTF-8').replace('\r\n', '\n') }
assert text('target/output.txt') == text('expected.txt')
