def last = new File(basedir, 'target/output.txt').readLines('UTF-8').last()
assert last.endsWith("formulas, every result the same as the plain loop's")
