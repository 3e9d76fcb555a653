package io.github.formulationmath.classroom;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.reckoning.Style;
import io.github.formulationmath.reckoning.Wording;
import java.io.StringWriter;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * A question bank in Moodle XML: {@code quiz/question}, of which those of type {@code category} say where the ones behind them
 * go. Questions and answers
 * are plain text, the working is HTML; the writer of the JDK escapes both.
 */
final class MoodleXml {

    private static final String RIGHT = "100";
    private static final String WRONG = "0";
    private static final int TEXT_LEVEL = 5;

    private final ClassSet set;
    private final Style style;
    private final Wording words;
    private final StringWriter text = new StringWriter();

    MoodleXml(ClassSet set, Style style) {
        this.set = set;
        this.style = style;
        this.words = style.wording();
    }

    String text() {
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            xml.writeStartDocument("UTF-8", "1.0");
            xml.writeStartElement("quiz");
            for (int topic = 0; topic < set.topics().size(); topic++) {
                category(xml, set.topics().get(topic));
                for (int learner = 1; learner <= set.learners().size(); learner++) {
                    question(xml, learner, set.exercises(learner).get(topic));
                }
            }
            xml.writeEndElement();
            xml.writeEndDocument();
            xml.close();
            return text.toString();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("a text in memory cannot fail to be written", e);
        }
    }

    /** A slash parts the levels of a category; written twice it is one of the name. */
    private void category(XMLStreamWriter xml, Topic topic) throws XMLStreamException {
        String name = Document.clean(set.title()).replace("/", "//") + "/"
                + topic.title(words).replace("/", "//");
        xml.writeStartElement("question");
        xml.writeAttribute("type", "category");
        xml.writeStartElement("category");
        element(xml, "text", "$course$/top/" + name);
        xml.writeEndElement();
        xml.writeEndElement();
    }

    private void question(XMLStreamWriter xml, int learner, Exercise exercise) throws XMLStreamException {
        xml.writeStartElement("question");
        xml.writeAttribute("type", "multichoice");
        xml.writeStartElement("name");
        element(xml, "text", words.say("class.question-name", exercise.topic().title(words), String.valueOf(learner)));
        xml.writeEndElement();
        text(xml, "questiontext", "plain_text", exercise.question(style));
        text(xml, "generalfeedback", "html", solution(exercise));
        element(xml, "defaultgrade", String.valueOf(set.pointsOf(exercise.topic())));
        element(xml, "penalty", WRONG);
        element(xml, "hidden", "0");
        element(xml, "single", "true");
        element(xml, "shuffleanswers", "true");
        element(xml, "answernumbering", "abc");
        List<String> choices = exercise.choices(style);
        for (int i = 0; i < choices.size(); i++) {
            String letter = Exercise.letter(i);
            xml.writeStartElement("answer");
            xml.writeAttribute("fraction", letter.equals(exercise.rightLetter()) ? RIGHT : WRONG);
            xml.writeAttribute("format", "plain_text");
            element(xml, "text", choices.get(i));
            text(xml, "feedback", "plain_text", exercise.explanation(letter, style));
            xml.writeEndElement();
        }
        xml.writeEndElement();
    }

    private String solution(Exercise exercise) {
        return Document.titled(exercise.topic().title(words), words.say("language"))
                .followedBy(exercise.working().derivation(style))
                .printPart(Format.HTML, TEXT_LEVEL);
    }

    private static void text(XMLStreamWriter xml, String name, String format, String content)
            throws XMLStreamException {
        xml.writeStartElement(name);
        xml.writeAttribute("format", format);
        element(xml, "text", content);
        xml.writeEndElement();
    }

    private static void element(XMLStreamWriter xml, String name, String content) throws XMLStreamException {
        xml.writeStartElement(name);
        xml.writeCharacters(content);
        xml.writeEndElement();
    }
}
