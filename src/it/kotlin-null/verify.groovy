// The compiler of Kotlin must refuse null, and nothing else may be wrong.
def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('Main.kt')
assert log =~ /argument type mismatch|[Tt]ype mismatch/
